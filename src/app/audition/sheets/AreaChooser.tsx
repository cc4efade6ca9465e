// Which area, or kind of area, the table is about: a list of kinds, and the areas of the kind on the table.

import { useMemo } from 'react';
import { Header, Menu, MenuItem, MenuSection, MenuTrigger, Separator } from 'react-aria-components/Menu';
import { Popover } from 'react-aria-components/Popover';
import { areaGroups } from '../../../session/contents.ts';
import { workOn } from '../../../session/lay/on-table.ts';
import { sayAreas } from '../../../session/sheet/area-words.ts';
import type { Stack } from '../../../session/sheet/stack.ts';
import { useSession, useTheSession } from '../../use-session.ts';
import { SpokenWord } from '../slip/SpokenWord.tsx';

/** So many areas of one kind are listed; the others are reached by touching them on the quilt. */
const MOST = 400;

export function AreaChooser({ stack }: { readonly stack: Stack }) {
  const session = useTheSession();
  const top = useSession((state) => state.evaluation.top);
  const groups = useMemo(() => areaGroups(top), [top]);
  const all = sayAreas(stack.kind, top.areas);
  const mine = groups.find(({ areas }) => areas.some(({ id }) => id === stack.on.area.id));
  return (
    <MenuTrigger>
      <SpokenWord className="area-chooser" label={`for ${all}: choose another area`} text={`for ${all}`} />
      <Popover className="sheet-up" placement="bottom start" offset={2}>
        <Menu
          className="menu"
          aria-label="What the table is about"
          selectionMode="single"
          selectedKeys={[`group:${mine?.id}`, `area:${stack.on.area.id}`]}
          onAction={(key) => {
            const name = String(key);
            const area = name.startsWith('area:') ? name.slice('area:'.length) : groups.find(({ id }) => `group:${id}` === name)?.areas[0]?.id;
            if (area === undefined) return;
            // The sheet that lies there may be for this area as well; otherwise the first that is.
            const stays = stack.on.areas.some(({ id }) => id === area);
            workOn(session, stays ? { area } : { area, sheet: undefined });
          }}
        >
          <MenuSection>
            <Header className="menu-title">Kinds of area</Header>
            {groups.map(({ id, name, areas }) => <MenuItem key={id} id={`group:${id}`} textValue={name}>{areas.length === 1 ? name : `${name} (${areas.length})`}</MenuItem>)}
          </MenuSection>
          <Separator className="menu-line" />
          <MenuSection>
            <Header className="menu-title">This one</Header>
            {(mine?.areas ?? []).slice(0, MOST).map(({ id, name }) => <MenuItem key={id} id={`area:${id}`} textValue={name}>{name}</MenuItem>)}
          </MenuSection>
        </Menu>
      </Popover>
    </MenuTrigger>
  );
}
