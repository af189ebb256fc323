import { readFileSync } from 'node:fs';
import { parseSync } from 'oxc-parser';

/** One exported function as its file shows it: what is said of it, and what its signature asks to be said. */
export interface SaidFunction {
  readonly file: string;
  readonly name: string;
  /** The docstring without its stars; empty when there is none. */
  readonly said: string;
  /** Names of parameters that are plain numbers. */
  readonly numbersIn: readonly string[];
  /** The written return type. */
  readonly returns: string;
  readonly throws: boolean;
}

interface Node {
  readonly type: string;
  readonly start: number;
  readonly end: number;
  readonly [field: string]: unknown;
}

/** The exported functions of a file, in its order; constants that are functions count. */
export function saidFunctionsIn(file: string): SaidFunction[] {
  const source = readFileSync(file, 'utf8');
  const { program, comments } = parseSync(file, source);
  const found: SaidFunction[] = [];
  for (const node of program.body as unknown as Node[]) {
    const declared = node.type === 'ExportNamedDeclaration' ? (node.declaration as Node | null) : null;
    if (!declared) continue;
    const before = comments.filter(
      comment =>
        comment.type === 'Block' &&
        comment.end <= node.start &&
        source.slice(comment.end, node.start).trim() === '',
    );
    const said = (before.at(-1)?.value ?? '')
      .replace(/\n\s*\*/g, ' ')
      .replace(/^\*/, '')
      .trim();
    for (const [name, body] of functionsOf(declared)) {
      const params = body.params as unknown as { readonly items?: Node[] } | Node[];
      const list = Array.isArray(params) ? params : (params.items ?? []);
      found.push({
        file,
        name,
        said,
        numbersIn: list.flatMap(param => numberNamed(param, source)),
        returns: typeText(body.returnType as Node | null, source),
        throws: /\bthrow new\b/.test(source.slice(body.start, body.end)),
      });
    }
  }
  return found;
}

const functionsOf = (declared: Node): [string, Node][] => {
  if (declared.type === 'FunctionDeclaration') return [[(declared.id as { name: string }).name, declared]];
  if (declared.type !== 'VariableDeclaration') return [];
  return (declared.declarations as Node[]).flatMap(one => {
    const init = one.init as Node | null;
    return init && /Function/.test(init.type)
      ? [[(one.id as { name: string }).name, init] as [string, Node]]
      : [];
  });
};

const numberNamed = (param: Node, source: string): string[] => {
  const inner = (param.type === 'AssignmentPattern' ? param.left : param) as Node;
  const written = typeText(inner.typeAnnotation as Node | null, source);
  const isNumber =
    written === 'number' || (written === '' && typeof (param.right as Node | undefined)?.value === 'number');
  return isNumber && typeof inner.name === 'string' ? [inner.name] : [];
};

const typeText = (annotation: Node | null | undefined, source: string): string =>
  annotation
    ? source
        .slice(annotation.start, annotation.end)
        .replace(/^(:|=>)\s*/, '')
        .trim()
    : '';
