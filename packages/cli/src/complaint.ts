import { paint, printable, type TextStyle } from '@boothwright/presentation';

/** Why a file or an argument cannot be used, in the form of the problems of a text. */
export interface Complaint {
  readonly id: string;
  /** Path as typed, with line and column where there is one. */
  readonly place: string;
  /** What was found and what was expected, no full stop. */
  readonly message: string;
  readonly help?: string | undefined;
}

export function complaintText(complaint: Complaint, style: TextStyle): string {
  const label = paint(`error[${complaint.id}]`, 'red', style);
  const help = complaint.help ? `\n  help: ${printable(complaint.help)}` : '';
  return `${printable(complaint.place)}: ${label}: ${printable(complaint.message)}${help}\n`;
}
