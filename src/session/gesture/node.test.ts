import { expect, it } from 'vitest';
import { type GestureNode, runGestures } from './node.ts';

it('tells the name of the node it is in, also of one that changes its name and stays itself', () => {
  const names: string[] = [];
  let name = 'resting';
  const chameleon: GestureNode = {
    get name() {
      return name;
    },
    on: (event) => {
      name = event.kind;
      return chameleon;
    },
  };
  const gestures = runGestures(chameleon, (told) => names.push(told));
  gestures.send({ kind: 'lost', pointer: 1 });
  gestures.send({ kind: 'lost', pointer: 1 });
  gestures.send({ kind: 'keys-up' });
  expect(names).toEqual(['lost', 'keys-up']);
  expect(gestures.name()).toBe('keys-up');
});
