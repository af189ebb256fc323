import { Refusal } from '../refusal.ts';

const bodyLimitBytes = 64 * 1024;

/** The JSON object of a small request, or a refusal that says what is wrong with it. */
export async function jsonOf(request: Request): Promise<Record<string, unknown>> {
  const text = await textOf(request, bodyLimitBytes);
  try {
    const value: unknown = JSON.parse(text);
    if (typeof value === 'object' && value !== null) return value as Record<string, unknown>;
  } catch {
    // Said below, the same for both.
  }
  throw new Refusal('This is not a JSON object.');
}

export async function textOf(request: Request, limitBytes: number): Promise<string> {
  if (!request.headers.get('content-type')?.startsWith('application/json')) {
    throw new Refusal('This address takes JSON.', { status: 415 });
  }
  if (Number(request.headers.get('content-length') ?? Number.POSITIVE_INFINITY) > limitBytes) {
    throw new Refusal('This is too long.', { status: 413 });
  }
  return request.text();
}
