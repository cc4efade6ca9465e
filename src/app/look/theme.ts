// Light or dark: vellum, slate, or as the system has it. Kept for the next time on this computer.

import { useSyncExternalStore } from 'react';

export const THEMES = [
  { id: 'system', name: 'As the system' },
  { id: 'vellum', name: 'Vellum' },
  { id: 'slate', name: 'Slate' },
] as const;

export type Theme = (typeof THEMES)[number]['id'];

const KEPT_AS = 'needlefall.theme';

/** The theme chosen last; the system's when none was, or when nothing may be kept here. */
export function keptTheme(): Theme {
  try {
    const kept = localStorage.getItem(KEPT_AS);
    return THEMES.find(({ id }) => id === kept)?.id ?? 'system';
  } catch {
    return 'system';
  }
}

/** Dresses the page in a theme and keeps the choice where that is allowed. */
export function wearTheme(theme: Theme): void {
  if (theme === 'system') delete document.documentElement.dataset.theme;
  else document.documentElement.dataset.theme = theme;
  try {
    localStorage.setItem(KEPT_AS, theme);
  } catch {
    // A browser that keeps nothing still wears the theme until it is closed.
  }
  for (const listener of listeners) listener();
}

const listeners = new Set<() => void>();

/** The theme worn now. */
export function useTheme(): Theme {
  return useSyncExternalStore(
    (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    () => THEMES.find(({ id }) => id === document.documentElement.dataset.theme)?.id ?? 'system',
  );
}
