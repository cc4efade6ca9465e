// What a command comes to: something to print, or why it could not be done. Exit codes are part of the contract.

/** Done. */
export const DONE = 0;
/** Done, and there are findings of severity error. */
export const TO_MEND = 1;
/** Something could not be read, or the command was used in a way it does not know. */
export const NOT_READ = 2;

export interface Answer {
  readonly exit: typeof DONE | typeof TO_MEND | typeof NOT_READ;
  /** For standard output. */
  readonly text?: string;
  /** For standard error: a sentence, and where there is more to say a line for each thing. */
  readonly complaint?: string;
}

/** How a command hands over its answer. */
export type Give = (answer: Answer | Promise<Answer>) => void;

/** All went well. */
export function done(text: string, complaint?: string): Answer {
  return complaint === undefined ? { exit: DONE, text } : { exit: DONE, text, complaint };
}

/** It could not be done, for a reason told in a sentence. */
export function refused(complaint: string): Answer {
  return { exit: NOT_READ, complaint };
}

/** The documented JSON of a command. */
export function asJson(value: unknown): string {
  return JSON.stringify(value, null, 2);
}
