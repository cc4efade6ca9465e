// Settings: how light it is, which hand she works with, how much moves, and what lengths are shown in.

import { Button } from 'react-aria-components/Button';
import { Header, Menu, MenuItem, MenuSection, MenuTrigger, Separator } from 'react-aria-components/Menu';
import { Popover } from 'react-aria-components/Popover';
import { showIn } from '../../session/choose.ts';
import { HAND, MOVEMENT, THEME } from '../look/choices.ts';
import type { Choice } from '../look/kept-choice.ts';
import { showSlip } from '../tour/tour.ts';
import { useSession, useTheSession } from '../use-session.ts';

const UNITS = [
  { id: 'in', name: 'Inches' },
  { id: 'cm', name: 'Centimetres' },
] as const;

export function SettingsMenu() {
  const session = useTheSession();
  const unit = useSession((state) => state.evaluation.plan.shownIn);
  const [theme, hand, movement] = [THEME.use(), HAND.use(), MOVEMENT.use()];
  return (
    <MenuTrigger>
      <Button className="word"><span>Settings</span></Button>
      <Popover className="sheet-up" placement="bottom end" offset={2}>
        <Menu className="menu" aria-label="Settings">
          {section('Light', THEME, theme)}
          <Separator className="menu-line" />
          <MenuSection
            selectionMode="single"
            disallowEmptySelection
            selectedKeys={[unit]}
            onSelectionChange={(keys) => {
              for (const key of keys) showIn(session, key as 'in' | 'cm');
            }}
          >
            <Header className="menu-title">Lengths in this plan</Header>
            {UNITS.map(({ id, name }) => <MenuItem key={id} id={id}>{name}</MenuItem>)}
          </MenuSection>
          <Separator className="menu-line" />
          {section('Hand', HAND, hand)}
          <Separator className="menu-line" />
          {section('Movement', MOVEMENT, movement)}
          <Separator className="menu-line" />
          <MenuItem onAction={() => showSlip(session, 0)}>Take the tour</MenuItem>
        </Menu>
      </Popover>
    </MenuTrigger>
  );
}

/** A section of one kept choice; keys are told apart by its title, since one menu wants each key once. A function rather than a component: the menu wants its sections as they are. */
function section<Id extends string>(title: string, choice: Choice<Id>, chosen: Id) {
  return (
    <MenuSection
      selectionMode="single"
      disallowEmptySelection
      selectedKeys={[`${title}:${chosen}`]}
      onSelectionChange={(keys) => {
        for (const key of keys) choice.choose(String(key).slice(title.length + 1) as Id);
      }}
    >
      <Header className="menu-title">{title}</Header>
      {choice.options.map(({ id, name }) => <MenuItem key={id} id={`${title}:${id}`}>{name}</MenuItem>)}
    </MenuSection>
  );
}
