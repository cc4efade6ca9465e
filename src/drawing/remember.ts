// Remembering what was made of an immutable thing, so that the same thing is drawn once and its items stay the same objects.

/** The function, its answers kept as long as the thing they were made of lives. */
export function remembered<Thing extends object, Made>(make: (thing: Thing) => Made): (thing: Thing) => Made {
  const known = new WeakMap<Thing, { readonly made: Made }>();
  return (thing) => {
    const before = known.get(thing);
    if (before) return before.made;
    const made = make(thing);
    known.set(thing, { made });
    return made;
  };
}

/** The same for what follows from two immutable things. */
export function rememberedPair<A extends object, B extends object, Made>(make: (a: A, b: B) => Made): (a: A, b: B) => Made {
  const ofFirst = remembered((a: A) => remembered((b: B) => make(a, b)));
  return (a, b) => ofFirst(a)(b);
}
