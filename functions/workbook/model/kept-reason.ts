/** Why a formula is left alone: its cell keeps the value it was saved with. */
export interface KeptReason {
  readonly kind: 'unknown-function' | 'unreadable' | 'other-workbook' | 'unsupported' | 'failure';
  readonly message: string;
}
