import type { Units } from '../base/measures.js';
import { type FabricField, type FabricSettings, fabricFields } from './fields.js';

/** What the page or the reader has set; what nobody has is not there. */
export type GivenFabricSettings = Readonly<Partial<Record<FabricField, string>>>;

/** Pieces of an invented quilt, for a page that names none. */
const usual: Readonly<Record<Units, GivenFabricSettings>> = {
  inches: {
    pieces: '24 of 2 1/2 by 8 1/2; 24 of 2 1/2 by 4 1/2; 12 of 4 1/2 by 4 1/2',
    width: '40',
    increment: '1/8 yd',
  },
  metric: {
    pieces: '24 of 6.5 by 21.5; 24 of 6.5 by 11.5; 12 of 11.5 by 11.5',
    width: '105',
    increment: '0.1 m',
    straightening: '2.5',
  },
};

const nothing = Object.fromEntries(fabricFields.map((field) => [field, ''])) as FabricSettings;

/** Every setting, with what is not given filled in. */
export const withFabricDefaults = (given: GivenFabricSettings, units: Units): FabricSettings => ({
  ...nothing,
  ...usual[units],
  ...given,
});
