import { describe, expect, it } from 'vitest';
import { writeJson } from './json-write.ts';

describe('writing JSON', () => {
  it('puts what is short and flat on one line, and breaks up the rest', () => {
    expect(writeJson({ at: [1, 2], pose: { x: 1, y: -0.5, angle: 45 }, list: [{ a: 1 }, { b: [] }], none: {} })).toBe(
      '{\n  "at": [1, 2],\n  "pose": { "x": 1, "y": -0.5, "angle": 45 },\n  "list": [\n    { "a": 1 },\n    { "b": [] }\n  ],\n  "none": {}\n}',
    );
  });

  it('breaks a line that would be too long', () => {
    const long = Array.from({ length: 60 }, (_, i) => i);
    expect(writeJson({ long }).split('\n')).toHaveLength(64);
  });

  it('is read back as the same value, infinity included', () => {
    const value = { a: [1e-9, 1e300, -1.5, Infinity, -Infinity, 0.1 + 0.2], b: 'q"\\\n\u2044', c: null, d: [[], [{}], [[1]]], e: true };
    expect(JSON.parse(writeJson(value))).toEqual(value);
  });

  it('leaves out what is undefined', () => {
    expect(JSON.parse(writeJson({ a: undefined, b: 1 }))).toEqual({ b: 1 });
  });
});
