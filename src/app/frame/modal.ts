// Says of a dialog that nothing else can be used while it is up, for those to whom the page is read out.

/** Given as the `ref` of a dialog that lies over all. */
export function modal(dialog: HTMLElement | null): void {
  dialog?.setAttribute('aria-modal', 'true');
}
