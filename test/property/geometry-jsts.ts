// The part of jsts (the JavaScript port of the JTS Topology Suite) that serves as a second opinion on geometry, with the types it lacks.

import Coordinate from 'jsts/org/locationtech/jts/geom/Coordinate.js';
import GeometryFactory from 'jsts/org/locationtech/jts/geom/GeometryFactory.js';
import 'jsts/org/locationtech/jts/monkey.js';

interface Place {
  readonly x: number;
  readonly y: number;
}

export interface Shape {
  readonly getLength: () => number;
  readonly getArea: () => number;
  readonly getCoordinates: () => readonly Place[];
  readonly getEnvelopeInternal: () => { readonly getMinX: () => number; readonly getMinY: () => number; readonly getMaxX: () => number; readonly getMaxY: () => number };
  readonly contains: (other: Shape) => boolean;
  readonly distance: (other: Shape) => number;
  readonly intersection: (other: Shape) => Shape;
}

interface Factory {
  readonly createPoint: (at: unknown) => Shape;
  readonly createLineString: (through: readonly unknown[]) => Shape;
  readonly createPolygon: (ring: readonly unknown[]) => Shape;
}

const NewCoordinate = Coordinate as new (x: number, y: number) => unknown;
const factory = new (GeometryFactory as new () => Factory)();

export function jstsPoint(p: Place): Shape {
  return factory.createPoint(new NewCoordinate(p.x, p.y));
}

export function jstsLine(points: readonly Place[]): Shape {
  return factory.createLineString(points.map((p) => new NewCoordinate(p.x, p.y)));
}

/** The polygon through the points; the first is not repeated. */
export function jstsPolygon(points: readonly Place[]): Shape {
  return factory.createPolygon([...points, ...points.slice(0, 1)].map((p) => new NewCoordinate(p.x, p.y)));
}
