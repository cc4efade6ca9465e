// Which plan lay on the table last: in this window for a reload, in this browser for the next time.

export type LastPlan = { readonly kind: 'own'; readonly id: string } | { readonly kind: 'example'; readonly id: string };

const KEPT_AS = 'needlefall.plan';

/** Remembers it. A browser that keeps nothing forgets it. */
export function rememberPlan({ kind, id }: LastPlan): void {
  try {
    sessionStorage.setItem(KEPT_AS, `${kind}:${id}`);
    // An example looked at does not take the place of her own plan the next time.
    if (kind === 'own') localStorage.setItem(KEPT_AS, `${kind}:${id}`);
  } catch {
    // Nothing can be kept here; the first example lies on the table the next time.
  }
}

/** The plan that lay here last, or nothing. */
export function lastPlan(): LastPlan | undefined {
  try {
    const kept = sessionStorage.getItem(KEPT_AS) ?? localStorage.getItem(KEPT_AS) ?? '';
    const [, kind, id] = /^(own|example):(.+)$/.exec(kept) ?? [];
    return kind !== undefined && id !== undefined ? { kind: kind as LastPlan['kind'], id } : undefined;
  } catch {
    return undefined;
  }
}
