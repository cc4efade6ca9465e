// The rooms of the app, in the order of the job.

export const ROOMS = ['top', 'kit', 'audition', 'check', 'sew', 'paper'] as const;

export type Room = (typeof ROOMS)[number];

export const ROOM_NAMES: { readonly [room in Room]: string } = {
  top: 'Top',
  kit: 'Kit',
  audition: 'Audition',
  check: 'Check',
  sew: 'Sew',
  paper: 'Paper',
};

/** Rooms that can be walked into; a room joins the list when it does its job. */
export const OPEN_ROOMS: readonly Room[] = ['top', 'kit', 'audition', 'check', 'paper'];

/** The room of this name, or undefined when there is none that can be walked into. */
export function roomNamed(name: string): Room | undefined {
  return OPEN_ROOMS.find((room) => room === name);
}
