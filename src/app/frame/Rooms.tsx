// The rooms, in plain words, with the foot's ring riding the edge to the room one is in: stitched behind it, holes ahead.

import { useLayoutEffect, useRef } from 'react';
import { OPEN_ROOMS, ROOM_NAMES } from '../../session/rooms.ts';
import { useSession } from '../use-session.ts';
import { FootSign } from '../words/signs.tsx';

export function Rooms() {
  const room = useSession((state) => state.room);
  const seam = useRef<HTMLDivElement>(null);
  const here = useRef<HTMLAnchorElement>(null);

  useLayoutEffect(() => {
    const ride = () => {
      const link = here.current!.getBoundingClientRect();
      const edge = seam.current!.getBoundingClientRect();
      seam.current!.style.setProperty('--ring-at', `${Math.round(link.left + link.width / 2 - edge.left)}px`);
    };
    // Speaks once at the beginning, when the page has been laid out.
    const observer = new ResizeObserver(ride);
    observer.observe(seam.current!);
    observer.observe(here.current!);
    void document.fonts.ready.then(ride);
    return () => observer.disconnect();
  }, [room]);

  return (
    <>
      <nav className="rooms" aria-label="Rooms">
        {OPEN_ROOMS.map((id) => (
          <a key={id} ref={id === room ? here : undefined} href={`#${id}`} aria-current={id === room ? 'page' : undefined} data-name={ROOM_NAMES[id]}>
            {ROOM_NAMES[id]}
          </a>
        ))}
      </nav>
      <div ref={seam} className="header-seam" aria-hidden="true">
        <div className="ring"><FootSign size={24} /></div>
      </div>
    </>
  );
}
