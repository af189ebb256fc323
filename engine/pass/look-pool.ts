import { type Meeting, SLOTS } from './bank-meeting.ts';
import type { BankStraights } from './bank-straights.ts';

/** Numbers of a look: the latest time that can count, then the time and the miss of each slot. */
const NUMBERS = 1 + 2 * SLOTS;
const FIRST_ROOM = 256;

/** The looks of one search at straights along the boards: what slots each has (`Meeting`). A look is the number of a row here; all are gone with the next search. */
export class LookPool {
  private count = 0;
  private straights = new Int32Array(FIRST_ROOM);
  /** A bit for each slot that is there. */
  private slots = new Uint8Array(FIRST_ROOM);
  private numbers = new Float64Array(FIRST_ROOM * NUMBERS);

  begin(): void {
    this.count = 0;
  }

  /** Looks at a straight; one that is not valid has no slots. */
  look(all: BankStraights, straight: number, meeting: Meeting): number {
    const look = this.count++;
    if (look === this.straights.length) this.grow();
    this.straights[look] = straight;
    this.slots[look] = 0;
    const at = look * NUMBERS;
    this.numbers[at] = 0;
    if (!all.valid(straight)) return look;
    meeting.findOn(straight);
    const { has, afterS, missM } = meeting;
    this.numbers[at] = meeting.capS;
    let bits = 0;
    for (let slot = 0; slot < SLOTS; slot++) {
      if (has[slot]) bits |= 1 << slot;
      this.numbers[at + 1 + slot] = afterS[slot]!;
      this.numbers[at + 1 + SLOTS + slot] = missM[slot]!;
    }
    this.slots[look] = bits;
    return look;
  }

  /** The slots (a bit each) whose miss changes its sign from one look to the next. */
  signChanges(from: number, to: number): number {
    const { numbers } = this;
    const both = this.slots[from]! & this.slots[to]!;
    let bits = 0;
    for (let slot = 0; both >> slot !== 0; slot++) {
      if ((both & (1 << slot)) === 0) continue;
      const missAt = 1 + SLOTS + slot;
      if (numbers[from * NUMBERS + missAt]! >= 0 !== numbers[to * NUMBERS + missAt]! >= 0) bits |= 1 << slot;
    }
    return bits;
  }

  /** The slots (a bit each) whose miss, of one sign in three looks that follow each other, is the least in the middle one. */
  dips(left: number, middle: number, right: number): number {
    const { numbers } = this;
    const all = this.slots[left]! & this.slots[middle]! & this.slots[right]!;
    let bits = 0;
    for (let slot = 0; all >> slot !== 0; slot++) {
      if ((all & (1 << slot)) === 0) continue;
      const missAt = 1 + SLOTS + slot;
      const at = numbers[middle * NUMBERS + missAt]!;
      const sign = at >= 0 ? 1 : -1;
      const a = sign * numbers[left * NUMBERS + missAt]!;
      const b = sign * numbers[right * NUMBERS + missAt]!;
      if (a >= 0 && b >= 0 && sign * at <= a && sign * at <= b) bits |= 1 << slot;
    }
    return bits;
  }

  /** Whether the same slots are there at both looks. */
  hasSameSlots(one: number, other: number): boolean {
    return this.slots[one] === this.slots[other];
  }

  straight(look: number): number {
    return this.straights[look]!;
  }

  capS(look: number): number {
    return this.numbers[look * NUMBERS]!;
  }

  has(look: number, slot: number): boolean {
    return (this.slots[look]! & (1 << slot)) !== 0;
  }

  afterS(look: number, slot: number): number {
    return this.numbers[look * NUMBERS + 1 + slot]!;
  }

  missM(look: number, slot: number): number {
    return this.numbers[look * NUMBERS + 1 + SLOTS + slot]!;
  }

  private grow(): void {
    const { straights, slots, numbers } = this;
    this.straights = new Int32Array(2 * straights.length);
    this.straights.set(straights);
    this.slots = new Uint8Array(2 * slots.length);
    this.slots.set(slots);
    this.numbers = new Float64Array(2 * numbers.length);
    this.numbers.set(numbers);
  }
}
