/** The UNO service is named like the namespace and its methods like the ids: that makes files store `OUNCE.SATTEMP`. */
const serviceName = 'OUNCE';

/** How LibreOffice Calc spells a function, in the sheet and in .ods and .xlsx files. */
export function spell(id: string): string {
  return `${serviceName}.${id}`;
}
