// Nearer, farther, all of it: beside the tape, never over the quilt.

import { Button } from 'react-aria-components/Button';
import { ZOOM_STEP, fitTop, zoomBy } from '../../session/look.ts';
import { useTheSession } from '../use-session.ts';

export function ViewControls() {
  const session = useTheSession();
  return (
    <div className="view-controls" role="group" aria-label="How the quilt is seen">
      <Button className="button round" aria-label="Farther" onPress={() => zoomBy(session, 1 / ZOOM_STEP)}>
        <span aria-hidden="true">−</span>
      </Button>
      <Button className="button round" aria-label="Nearer" onPress={() => zoomBy(session, ZOOM_STEP)}>
        <span aria-hidden="true">+</span>
      </Button>
      <Button className="button" onPress={() => fitTop(session)}>Fit</Button>
    </div>
  );
}
