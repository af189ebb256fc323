/** The sheets that can be chosen by name. */
export const RINK_PRESETS = [
  '200x85ft',
  '60x30m',
  '60x26m',
  'college200x100ft',
  'halfIce',
  'crossIce',
] as const;

export type RinkPreset = (typeof RINK_PRESETS)[number];

/** Which sheet: a named one, or an own size in metres. */
export type RinkChoice =
  | { readonly preset: RinkPreset }
  | {
      readonly preset: 'own';
      readonly lengthM: number;
      readonly widthM: number;
      readonly cornerRadiusM: number;
    };

/** Size of a sheet, metres. */
export interface RinkSize {
  readonly lengthM: number;
  readonly widthM: number;
  readonly cornerRadiusM: number;
}

/** Two families of rule books. They are not interchangeable: one measures to a blue line's edge, the other to its centre. */
export type RinkCode = 'NHL-type' | 'IIHF-type';
