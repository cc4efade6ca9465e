// JSON that reads well and changes little from one save to the next: what is short and flat stands on one line.

/** No line is broken that would be shorter than this. */
const LINE = 110;

/** The text of a JSON value; absent (undefined) fields are left out. */
export function writeJson(value: unknown, indent = ''): string {
  if (Array.isArray(value)) return writeArray(value, indent);
  if (typeof value === 'object' && value !== null) return writeObject(Object.entries(value), indent);
  return leaf(value);
}

function leaf(value: unknown): string {
  // The only way to say infinity in JSON; it is read back as itself.
  if (value === Infinity) return '1e999';
  if (value === -Infinity) return '-1e999';
  return JSON.stringify(value) ?? 'null';
}

function writeArray(items: readonly unknown[], indent: string): string {
  if (items.length === 0) return '[]';
  const inside = `${indent}  `;
  const parts = items.map((item) => writeJson(item, inside));
  const line = `[${parts.join(', ')}]`;
  if (items.every(isFlat) && indent.length + line.length <= LINE) return line;
  return `[\n${parts.map((part) => inside + part).join(',\n')}\n${indent}]`;
}

function writeObject(entries: readonly (readonly [string, unknown])[], indent: string): string {
  const fields = entries.filter(([, value]) => value !== undefined);
  if (fields.length === 0) return '{}';
  const inside = `${indent}  `;
  const parts = fields.map(([name, value]) => `${JSON.stringify(name)}: ${writeJson(value, inside)}`);
  const line = `{ ${parts.join(', ')} }`;
  // The outermost object is always broken up, so that a plan reads from top to bottom.
  if (indent !== '' && fields.every(([, value]) => isFlat(value)) && indent.length + line.length <= LINE) return line;
  return `{\n${parts.map((part) => inside + part).join(',\n')}\n${indent}}`;
}

/** A single value, or a list of single values. */
function isFlat(value: unknown): boolean {
  if (Array.isArray(value)) return value.every((item) => typeof item !== 'object' || item === null);
  return typeof value !== 'object' || value === null || Object.keys(value).length === 0;
}
