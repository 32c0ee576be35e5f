/** Takes the help texts and examples out of the source text of a declaration. */
export default function withoutHelp(code: string): string;
