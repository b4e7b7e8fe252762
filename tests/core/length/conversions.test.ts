import { formatLength, length } from '@eighths/core';
import { describe, expect, it } from 'vitest';

describe('units agree with the published standards', () => {
  const standards: readonly (readonly [string, string, string])[] = [
    // US National Bureau of Standards, addendum to NBS Circular 572, effective 1 July 1959 (grade A).
    ['1 yd', '0.9144 m', 'NBS Circular 572, addendum'],
    ['1 in', '25.4 mm', 'NBS Circular 572, addendum: follows from the yard'],
    // Weights and Measures Act 1985 (UK), section 1(1)(a) (grade A).
    ['1 yard', '0.9144 metre', 'Weights and Measures Act 1985, s. 1(1)(a)'],
    // 85 FR 62698, NIST and NOAA, 5 October 2020: in all applications since 1 January 2023 (grade A).
    ['1 ft', '0.3048 m', '85 FR 62698'],
    // UCUM essence 2.2 (2024), codes [in_i], [ft_i] and [yd_i] (grade A).
    ['1 inch', '2.54 cm', 'UCUM essence 2.2, [in_i]'],
    ['1 foot', '12 inches', 'UCUM essence 2.2, [ft_i]'],
    ['1 yard', '3 feet', 'UCUM essence 2.2, [yd_i]'],
    // NIST LC 1137, Metric Style Guide (2000), second-hand (grade A).
    ['36 in', '91.44 cm', 'NIST LC 1137, second-hand'],
    ['40.1 in', '101.854 cm', 'NIST LC 1137, second-hand'],
  ];
  it.each(standards)('%s is exactly %s (%s)', (one, other) => {
    expect(length(one).equals(other)).toBe(true);
    expect(length(one).minus(other).toString()).toBe('0');
  });

  // NIST LC 1137, Metric Style Guide (2000), second-hand (grade A).
  it.each([
    ['36', '91.44\u00a0cm'],
    ['40.1', '101.854\u00a0cm'],
  ])('%s in is written %s (NIST LC 1137, second-hand)', (inches, text) => {
    expect(formatLength(inches, { unit: 'cm' })).toBe(text);
  });

  it.each([
    ['1 m', '100 cm'],
    ['1 cm', '10 mm'],
    ['1 yd', '36 in'],
  ])('%s is exactly %s (the meaning of the prefixes and names)', (one, other) => {
    expect(length(one).equals(other)).toBe(true);
  });
});
