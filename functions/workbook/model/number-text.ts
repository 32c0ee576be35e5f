/** A number as text the way a cell in General format joins it to other text: at most 15 significant digits. */
export function numberText(value: number): string {
  if (Number.isInteger(value) && Math.abs(value) < 1e15) return value === 0 ? '0' : String(value);
  const rounded = Number(value.toPrecision(15));
  const magnitude = Math.abs(rounded);
  if (magnitude >= 1e21 || (magnitude < 1e-9 && magnitude > 0)) return scientific(rounded);
  if (magnitude >= 1e-6) return String(rounded);
  return rounded.toFixed(20).replace(/0+$/, '');
}

function scientific(value: number): string {
  const [mantissa = '', exponent = '0'] = value.toExponential().split('e');
  const power = Number(exponent);
  const digits = String(Math.abs(power)).padStart(2, '0');
  return `${mantissa}E${power < 0 ? '-' : '+'}${digits}`;
}
