import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isSkippable, lengthSizeOf } from './skippable.ts';

/** One length-prefixed unit: nal_ref_idc in bits 5–6 and nal_unit_type in bits 0–4 of its first byte (ISO/IEC 14496-10 §7.3.1). */
const unit = (refIdc: number, type: number, payload: number): number[] => {
  const size = 1 + payload;
  return [size >>> 24, (size >>> 16) & 255, (size >>> 8) & 255, size & 255, (refIdc << 5) | type].concat(
    Array.from({ length: payload }, () => 0xff),
  );
};

describe('H.264 packets that no other picture needs', () => {
  it('are those whose every slice has nal_ref_idc 0', () => {
    const slice = fc.tuple(fc.integer({ min: 0, max: 3 }), fc.constantFrom(1, 5), fc.nat(40));
    const other = fc.tuple(fc.constantFrom(0, 3), fc.constantFrom(6, 7, 8, 9), fc.nat(20));
    fc.assert(
      fc.property(fc.array(fc.oneof(slice, other), { minLength: 1, maxLength: 8 }), units => {
        const bytes = Uint8Array.from(units.flatMap(([ref, type, payload]) => unit(ref, type, payload)));
        const slices = units.filter(([, type]) => type <= 5);
        expect(isSkippable(bytes, 4)).toBe(slices.length > 0 && slices.every(([ref]) => ref === 0));
      }),
    );
  });

  it('are not looked for where packets have no length prefix', () => {
    expect(lengthSizeOf({ codec: 'avc1.64001f' })).toBeUndefined();
    expect(lengthSizeOf({ codec: 'vp09.00.10.08', description: new Uint8Array(8) })).toBeUndefined();
    expect(
      lengthSizeOf({ codec: 'avc1.64001f', description: Uint8Array.of(1, 100, 0, 31, 0xff, 0xe1) }),
    ).toBe(4);
  });
});
