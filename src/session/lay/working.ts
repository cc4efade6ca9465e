// What was chosen to lie on the table in Audition.

/** A sheet and an area by id; what is not there (any more) gives way to the first that is. */
export interface Working {
  readonly sheet: string | undefined;
  readonly area: string | undefined;
}
