/** A case (or part of one) that is not shaped as its kind needs. The sentence names the field. */
export class CaseShapeError extends Error {}

/** Reads the fields of a parsed JSON object, and says in words what is missing or of the wrong type. */
export class Fields {
  readonly #values: Readonly<Record<string, unknown>>;
  readonly #where: string;

  constructor(value: unknown, where: string) {
    if (!isRecord(value)) throw new CaseShapeError(`${where} is not an object`);
    this.#values = value;
    this.#where = where;
  }

  /** True when the field is there; `null` counts as there. */
  has(name: string): boolean {
    return name in this.#values;
  }

  isNull(name: string): boolean {
    return this.#values[name] === null;
  }

  number(name: string): number {
    return numberFrom(this.#values[name], this.#path(name));
  }

  /** A number, or null for "there is none". */
  numberOrNull(name: string): number | null {
    return this.isNull(name) ? null : this.number(name);
  }

  numberOr(name: string, otherwise: number): number {
    return this.has(name) ? this.number(name) : otherwise;
  }

  text(name: string): string {
    const value = this.#values[name];
    if (typeof value !== 'string') throw new CaseShapeError(`${this.#path(name)} is not a text`);
    return value;
  }

  textOrNull(name: string): string | null {
    return this.isNull(name) ? null : this.text(name);
  }

  flag(name: string): boolean {
    const value = this.#values[name];
    if (typeof value !== 'boolean') throw new CaseShapeError(`${this.#path(name)} is not true or false`);
    return value;
  }

  list(name: string): readonly unknown[] {
    const value = this.#values[name];
    if (!Array.isArray(value)) throw new CaseShapeError(`${this.#path(name)} is not a list`);
    return value;
  }

  numbers(name: string): readonly number[] {
    return this.list(name).map((value, i) => numberFrom(value, `${this.#path(name)}[${i}]`));
  }

  numbersOrNulls(name: string): readonly (number | null)[] {
    return this.list(name).map((value, i) =>
      value === null ? null : numberFrom(value, `${this.#path(name)}[${i}]`),
    );
  }

  /** `[x, y]`. */
  pair(name: string): readonly [number, number] {
    return pairFrom(this.#values[name], this.#path(name));
  }

  pairs(name: string): readonly (readonly [number, number])[] {
    return this.list(name).map((value, i) => pairFrom(value, `${this.#path(name)}[${i}]`));
  }

  /** Rows of numbers. */
  table(name: string): readonly (readonly number[])[] {
    return this.list(name).map((row, i) => {
      const where = `${this.#path(name)}[${i}]`;
      if (!Array.isArray(row)) throw new CaseShapeError(`${where} is not a list`);
      return row.map((value, k) => numberFrom(value, `${where}[${k}]`));
    });
  }

  fields(name: string): Fields {
    return new Fields(this.#values[name], this.#path(name));
  }

  fieldsList(name: string): readonly Fields[] {
    return this.list(name).map((value, i) => new Fields(value, `${this.#path(name)}[${i}]`));
  }

  #path(name: string): string {
    return `${this.#where}.${name}`;
  }
}

export const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const numberFrom = (value: unknown, where: string): number => {
  if (typeof value !== 'number' || !Number.isFinite(value))
    throw new CaseShapeError(`${where} is not a number`);
  return value;
};

const pairFrom = (value: unknown, where: string): readonly [number, number] => {
  if (!Array.isArray(value) || value.length !== 2)
    throw new CaseShapeError(`${where} is not a pair of numbers`);
  return [numberFrom(value[0], `${where}[0]`), numberFrom(value[1], `${where}[1]`)];
};
