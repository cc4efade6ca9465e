// The dotted word for the template that is to be used: any of the kit, or one of them.

import { useSession } from '../../use-session.ts';
import { WordChoice } from '../slip/WordChoice.tsx';

const ANY = '';

export function TemplateWord({ template, onTemplate }: { readonly template: string | undefined; readonly onTemplate: (template: string | undefined) => void }) {
  const templates = useSession((state) => state.evaluation.plan.kit.templates);
  const shelf = Object.entries(templates).filter(([, { hidden }]) => !hidden);
  const text = template === undefined ? 'any of your templates' : (templates[template]?.name ?? 'a template that is not here');
  return (
    <WordChoice
      label="Template"
      text={text}
      options={() => [{ id: ANY, name: 'any of your templates' }, ...shelf.map(([id, { name }]) => ({ id, name }))]}
      chosen={template ?? ANY}
      onChoose={(id) => onTemplate(id === ANY ? undefined : id)}
    />
  );
}
