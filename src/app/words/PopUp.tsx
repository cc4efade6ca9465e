// A small paper that pops up beside what opened it, with something to read or fill in; Escape or a press beside it puts it away.
// The paper is the dialog itself, so that everything on it belongs to the dialog for those to whom it is read out.

import { type ReactNode, useContext } from 'react';
import { OverlayTriggerStateContext } from 'react-aria-components/Dialog';
import { Popover } from 'react-aria-components/Popover';

export interface PopUpProps {
  readonly className: string;
  /** Between the paper and what opened it, in CSS pixels. */
  readonly offset: number;
  /** What stands on it; `close` puts the paper away. */
  readonly children: (close: () => void) => ReactNode;
}

/** Within a `DialogTrigger`, whose button gives it its name. */
export function PopUp({ className, offset, children }: PopUpProps) {
  return (
    <Popover className="sheet-up" placement="bottom start" offset={offset}>
      <Paper className={className}>{children}</Paper>
    </Popover>
  );
}

function Paper({ className, children }: Pick<PopUpProps, 'className' | 'children'>) {
  const state = useContext(OverlayTriggerStateContext);
  return <div className={className}>{children(() => state?.close())}</div>;
}
