// Plans from text and to text. Reading answers with a plan or with everything that is wrong, each with its place;
// writing gives the same text for the same plan, and keeps the fields this version does not know.

import type { z } from 'zod';
import { type Outcome, fail, ok } from '../num/outcome.ts';
import { type JsonPath, jsonPlaces, lineAndColumn, placeKey } from './json-places.ts';
import { writeJson } from './json-write.ts';
import { type JsonObject, migrate } from './migrate.ts';
import { PLAN_FORMAT, PLAN_VERSION, type Plan } from './plan.ts';
import { type SchemaIssue, issuesOf } from './schema-issues.ts';
import { planSchema } from './schema.ts';

/** Something in a file that keeps it from being read as a plan. */
export interface PlanProblem {
  /** Of the field: `sheets.corner-arcs.placements.p1.foot`; empty for the file as a whole. */
  readonly path: string;
  readonly expected: string;
  readonly found: string;
  /** The whole in one sentence. */
  readonly message: string;
  /** In the text that was read, from 1; left out when the file was brought up from an older version. */
  readonly line?: number;
  readonly column?: number;
}

/**
 * The plan in a file's text, brought up to this version if it is older. Nothing is left out or repaired: either all of
 * it can be read, or every problem comes back at once. Never throws.
 */
export function readPlan(text: string): Outcome<Plan, readonly PlanProblem[]> {
  const json = text.startsWith('\uFEFF') ? text.slice(1) : text;
  if (json.trim() === '') return fail([wholeFile('a plan', 'an empty file', 'The file is empty.')]);
  const parsed = parse(json);
  if (!parsed.ok) return parsed;
  const file = parsed.value;
  if (!isObject(file) || file['format'] !== PLAN_FORMAT) return fail([notAPlan(file)]);
  const version = file['version'];
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1) {
    return fail([problemOf(['version'], 'a version number, 1 or more', describe(version), placesIn(json))]);
  }
  if (version > PLAN_VERSION) return fail([tooNew(version)]);
  return check(migrate(file, version), version === PLAN_VERSION ? json : undefined);
}

/** The text of a plan's file: fields in the order of the schema, short things on one line, unknown fields kept. */
export function writePlan(plan: Plan): string {
  return `${writeJson(plan)}\n`;
}

/** A problem's path as it is shown: `top.borders[1].width`. */
export function writePath(path: JsonPath): string {
  return path.map((step, i) => (typeof step === 'number' ? `[${step}]` : i === 0 ? step : `.${step}`)).join('');
}

function parse(json: string): Outcome<unknown, readonly PlanProblem[]> {
  // The scan comes first: what it lets pass is JSON, and not nested so deep that the stack would give out later.
  const places = jsonPlaces(json);
  if (places.ok) return ok(JSON.parse(json));
  const { line, column, expected, found } = places.problem;
  const message = `This is not JSON past line ${line}, column ${column}: expected ${expected}, found ${found}.`;
  return fail([{ path: '', expected, found, message, line, column }]);
}

function check(file: JsonObject, json: string | undefined): Outcome<Plan, readonly PlanProblem[]> {
  const result: z.ZodSafeParseResult<unknown> = planSchema.safeParse(file);
  if (result.success) return ok(result.data as Plan);
  const places = json === undefined ? undefined : placesIn(json);
  return fail(issuesOf(result.error.issues, file).map((issue) => problemAt(issue, places)));
}

function problemAt(issue: SchemaIssue, places: PlacesIn | undefined): PlanProblem {
  return problemOf(issue.path, issue.expected, describe(issue.found), places);
}

type PlacesIn = (path: JsonPath) => { readonly line: number; readonly column: number } | undefined;

/** Finds the place of a field in the text; of the nearest thing around it when the field itself is not there. */
function placesIn(json: string): PlacesIn {
  const places = jsonPlaces(json);
  return (path) => {
    if (!places.ok) return undefined;
    for (let depth = path.length; depth >= 0; depth--) {
      const offset = places.value.get(placeKey(path.slice(0, depth)));
      if (offset !== undefined) return lineAndColumn(json, offset);
    }
    return undefined;
  };
}

function problemOf(path: JsonPath, expected: string, found: string, places: PlacesIn | undefined): PlanProblem {
  const place = places?.(path);
  const where = place ? ` (line ${place.line})` : '';
  const shown = writePath(path);
  return { path: shown, expected, found, message: `${shown || 'The file'}${where}: expected ${expected}; found ${found}.`, ...place };
}

function wholeFile(expected: string, found: string, message: string): PlanProblem {
  return { path: '', expected, found, message };
}

function notAPlan(file: unknown): PlanProblem {
  const found = isObject(file) ? describe(file['format']) : describe(file);
  return { ...wholeFile(`"format": "${PLAN_FORMAT}"`, found, `This is not a Needlefall plan: expected "format": "${PLAN_FORMAT}", found ${found}.`), path: isObject(file) ? 'format' : '' };
}

function tooNew(version: number): PlanProblem {
  const message = `This plan was made by a newer Needlefall: it is version ${version}, and this one reads up to version ${PLAN_VERSION}.`;
  return { path: 'version', expected: `version ${PLAN_VERSION} or older`, found: String(version), message };
}

/** A value in a few words. */
function describe(value: unknown): string {
  if (value === undefined) return 'nothing';
  if (Array.isArray(value)) return value.length === 0 ? 'an empty list' : `a list of ${value.length}`;
  if (isObject(value)) {
    const fields = Object.keys(value);
    if (fields.length === 0) return 'an empty map';
    return `a map with ${fields.slice(0, 4).map((field) => shortened(JSON.stringify(field))).join(', ')}${fields.length > 4 ? ' ...' : ''}`;
  }
  return shortened(typeof value === 'number' ? String(value) : JSON.stringify(value));
}

function shortened(text: string): string {
  return text.length > 40 ? `${text.slice(0, 38)}…"` : text;
}

function isObject(value: unknown): value is JsonObject {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
