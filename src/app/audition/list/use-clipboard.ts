// Copy, cut and paste, by the usual keys and by buttons. The clipboard holds text; where the browser does not let a button read it,
// what was copied here last is pasted.

import { useEffect, useRef, useState } from 'react';
import { copied, cut, paste } from '../../../session/clipboard.ts';
import { useTheSession } from '../../use-session.ts';

export interface ClipHands {
  readonly copy: () => void;
  readonly cut: () => void;
  readonly paste: () => void;
  /** What came of the last one, in words; empty when there is nothing to say. */
  readonly said: string;
}

/** Listens for as long as the room is open. */
export function useClipboard(): ClipHands {
  const session = useTheSession();
  const last = useRef('');
  const [said, setSaid] = useState('');

  useEffect(() => {
    const put = (event: ClipboardEvent, take: () => string | undefined) => {
      if (isTyping(event.target) || hasMarkedText()) return;
      const text = take();
      if (text === undefined || !event.clipboardData) return;
      event.clipboardData.setData('text/plain', text);
      event.preventDefault();
      last.current = text;
      setSaid('Copied.');
    };
    const onCopy = (event: ClipboardEvent) => put(event, () => copied(session.getState()));
    const onCut = (event: ClipboardEvent) => put(event, () => cut(session));
    const onPaste = (event: ClipboardEvent) => {
      if (isTyping(event.target) || !event.clipboardData) return;
      event.preventDefault();
      setSaid(paste(session, event.clipboardData.getData('text/plain')) ?? 'Pasted.');
    };
    addEventListener('copy', onCopy);
    addEventListener('cut', onCut);
    addEventListener('paste', onPaste);
    return () => {
      removeEventListener('copy', onCopy);
      removeEventListener('cut', onCut);
      removeEventListener('paste', onPaste);
    };
  }, [session]);

  const keep = (text: string | undefined) => {
    if (text === undefined) return setSaid('Pick out a template or a pass first.');
    last.current = text;
    setSaid('Copied.');
    // Where it may not be written to the clipboard, it can still be pasted here.
    void navigator.clipboard?.writeText(text).catch(() => undefined);
  };
  return {
    said,
    copy: () => keep(copied(session.getState())),
    cut: () => keep(cut(session)),
    paste: () => {
      const read = navigator.clipboard?.readText?.() ?? Promise.reject(new Error('no clipboard'));
      void read.catch(() => last.current).then((text) => setSaid(paste(session, text.trim() === '' ? last.current : text) ?? 'Pasted.'));
    },
  };
}

function isTyping(target: EventTarget | null): boolean {
  return target instanceof HTMLTextAreaElement || target instanceof HTMLSelectElement || (target instanceof HTMLInputElement && target.type === 'text');
}

/** Words on the screen that were marked to be copied go before templates. */
function hasMarkedText(): boolean {
  return (getSelection()?.toString() ?? '') !== '';
}
