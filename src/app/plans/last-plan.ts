// Which plan lay on the table of this window, for a reload. Which one lay on any table last stands in the database: what
// browsers keep beside it reaches the disk only seconds later.

export type LastPlan = { readonly kind: 'own'; readonly id: string } | { readonly kind: 'example'; readonly id: string };

const KEPT_AS = 'needlefall.plan';

/** Remembers it. A browser that keeps nothing forgets it. */
export function rememberPlan({ kind, id }: LastPlan): void {
  try {
    sessionStorage.setItem(KEPT_AS, `${kind}:${id}`);
  } catch {
    // After a reload, what was laid last in any window lies here.
  }
}

/** The plan that lay here last, or nothing in a new window. */
export function lastPlan(): LastPlan | undefined {
  try {
    const [, kind, id] = /^(own|example):(.+)$/.exec(sessionStorage.getItem(KEPT_AS) ?? '') ?? [];
    return kind !== undefined && id !== undefined ? { kind: kind as LastPlan['kind'], id } : undefined;
  } catch {
    return undefined;
  }
}
