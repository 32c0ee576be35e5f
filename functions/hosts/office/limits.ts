/** What Excel's function list takes, in characters. Longer text makes it refuse the whole list. */
export const longestDescription = 1024;
export const longestParameterDescription = 512;

/** Text that fits: whole sentences first, an ellipsis when not even one does. */
export function fit(text: string, longest: number): string {
  if (text.length <= longest) return text;
  const head = text.slice(0, longest);
  const end = head.lastIndexOf('. ');
  return end > 0 ? head.slice(0, end + 1) : `${head.slice(0, longest - 1)}…`;
}
