import type { Row } from '../units/provenance.ts';

/** Every number of the puck's laws, with where it comes from. A rink can replace μ, e and μ_b by its own film measurements. */
export const PUCK_ROWS = {
  frictionRatio: {
    name: 'puck on ice, friction μ',
    value: 0.08,
    unit: '',
    range: [0.05, 0.12],
    source: 'No trustworthy published value read; 0.05 fresh hard ice, 0.12 snowy. Calibrate with one film.',
    status: 'estimate',
  },
  dragPerM: {
    name: 'air drag of the sliding puck, k',
    value: 0.004,
    unit: '1/m',
    range: [0, 0.008],
    source: 'k = ½ρ·Cd·A/m with A = 76 × 25 mm, m = 0.167 kg, Cd about 0.55',
    status: 'estimate',
  },
  gravityMps2: {
    name: 'gravity',
    value: 9.80665,
    unit: 'm/s²',
    range: [9.764, 9.834],
    source:
      'Standard gravity, 3rd General Conference on Weights and Measures, 1901; the range is that of the Earth',
    status: 'sourced',
  },
  restitutionRatio: {
    name: 'puck off the boards, restitution e',
    value: 0.45,
    unit: '',
    range: [0.3, 0.6],
    source:
      'No test of a puck on rink boards found; drop tests give 0.45–0.55 warm, 0.12–0.27 frozen (Anderson 2008, Washington State University)',
    status: 'estimate',
  },
  boardFrictionRatio: {
    name: 'puck along the boards, friction μ_b',
    value: 0.25,
    unit: '',
    range: [0.15, 0.35],
    source: 'No test found. Calibrate with one filmed bounce.',
    status: 'estimate',
  },
  puckRadiusM: {
    name: 'radius of the puck',
    value: 0.0381,
    unit: 'm',
    range: [0.0381, 0.0381],
    source: 'Three inches across by rule; rule value from memory',
    status: 'sourced',
  },
  rimIncidenceRad: {
    name: 'a puck that meets a corner flatter than this follows the boards',
    value: (12 * Math.PI) / 180,
    unit: 'rad',
    range: [(6 * Math.PI) / 180, (18 * Math.PI) / 180],
    source: 'Our choice: below it the bounces crowd together',
    status: 'estimate',
  },
  rimBounceGapS: {
    name: 'two bounces within this time in a corner become a rim',
    value: 0.15,
    unit: 's',
    range: [0.05, 0.25],
    source: 'Our choice',
    status: 'estimate',
  },
  landingKeptRatio: {
    name: 'speed a saucer pass keeps when it lands flat',
    value: 0.95,
    unit: '',
    range: [0.85, 1],
    source: 'The puck lands flat with little bounce; the share of speed kept is our estimate',
    status: 'estimate',
  },
  saucerHeightM: {
    name: 'how high a saucer pass tops out',
    value: 0.2,
    unit: 'm',
    range: [0.1, 0.35],
    source: 'clears a blade of 5 to 8 cm, and a shaft half way along it barely; common practice, no source',
    status: 'estimate',
  },
} as const satisfies Record<string, Row>;
