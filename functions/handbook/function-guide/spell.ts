/** How the guide spells a function: as Excel, LibreOffice and the worksheet page show it. The page "Install" names the rest. */
export function spell(id: string): string {
  return `OUNCE.${id}`;
}
