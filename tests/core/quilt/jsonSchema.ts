/** As much of JSON Schema as a recipe's schema uses; what it does not know fails. */
export interface JsonSchema {
  readonly [keyword: string]: unknown;
}

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** Where a value is not what a schema asks for; undefined where it is. */
export function fault(schema: unknown, value: unknown, path = ''): string | undefined {
  if (!isRecord(schema)) throw new Error(`This is no schema: ${path}`);
  for (const [keyword, rule] of Object.entries(schema)) {
    const check = KEYWORDS[keyword];
    if (check === undefined) throw new Error(`A keyword that this check does not know: ${keyword}`);
    const found = check(rule, value, path, schema);
    if (found !== undefined) return found;
  }
  return undefined;
}

type Check = (
  rule: unknown,
  value: unknown,
  path: string,
  schema: JsonSchema,
) => string | undefined;

const when =
  (wrong: (rule: unknown, value: unknown) => boolean): Check =>
  (rule, value, path) =>
    wrong(rule, value) ? path : undefined;

const note: Check = () => undefined;

const kindOf = (value: unknown): string =>
  value === null ? 'null' : Array.isArray(value) ? 'array' : typeof value;

const each = (
  values: readonly (readonly [string, unknown])[],
  schemaOf: (key: string) => unknown,
  path: string,
): string | undefined => {
  for (const [key, value] of values) {
    const found = fault(schemaOf(key), value, `${path}/${key}`);
    if (found !== undefined) return found;
  }
  return undefined;
};

const KEYWORDS: Readonly<Record<string, Check>> = {
  $schema: note,
  title: note,
  description: note,
  default: note,
  type: when((rule, value) =>
    rule === 'integer' ? !Number.isInteger(value) : rule !== kindOf(value),
  ),
  const: when((rule, value) => rule !== value),
  enum: when((rule, value) => Array.isArray(rule) && !rule.includes(value)),
  pattern: when(
    (rule, value) => typeof value === 'string' && !new RegExp(String(rule)).test(value),
  ),
  minimum: when((rule, value) => typeof value === 'number' && value < Number(rule)),
  maximum: when((rule, value) => typeof value === 'number' && value > Number(rule)),
  minLength: when((rule, value) => typeof value === 'string' && value.length < Number(rule)),
  maxLength: when((rule, value) => typeof value === 'string' && value.length > Number(rule)),
  minItems: when((rule, value) => Array.isArray(value) && value.length < Number(rule)),
  maxItems: when((rule, value) => Array.isArray(value) && value.length > Number(rule)),
  required: when(
    (rule, value) =>
      isRecord(value) && Array.isArray(rule) && rule.some((name) => !Object.hasOwn(value, name)),
  ),
  properties: (rule, value, path) =>
    isRecord(value) && isRecord(rule)
      ? each(
          Object.entries(value).filter(([key]) => Object.hasOwn(rule, key)),
          (key) => rule[key],
          path,
        )
      : undefined,
  propertyNames: (rule, value, path) =>
    isRecord(value)
      ? each(
          Object.keys(value).map((key) => [key, key]),
          () => rule,
          path,
        )
      : undefined,
  additionalProperties: (rule, value, path, { properties }) => {
    if (!isRecord(value)) return undefined;
    const others = Object.entries(value).filter(
      ([key]) => !(isRecord(properties) && Object.hasOwn(properties, key)),
    );
    if (rule === false) return others.length > 0 ? `${path}/${others[0]?.[0]}` : undefined;
    return each(others, () => rule, path);
  },
  prefixItems: (rule, value, path) =>
    Array.isArray(value) && Array.isArray(rule)
      ? each(
          value.slice(0, rule.length).map((item, index) => [String(index), item]),
          (key) => rule[Number(key)],
          path,
        )
      : undefined,
  items: (rule, value, path, { prefixItems }) => {
    if (!Array.isArray(value)) return undefined;
    const from = Array.isArray(prefixItems) ? prefixItems.length : 0;
    const rest = value.slice(from).map((item, index) => [String(from + index), item] as const);
    if (rule === false) return rest.length > 0 ? path : undefined;
    return each(rest, () => rule, path);
  },
  oneOf: (rule, value, path) =>
    Array.isArray(rule) &&
    rule.filter((option) => fault(option, value, path) === undefined).length !== 1
      ? path
      : undefined,
  anyOf: (rule, value, path) =>
    Array.isArray(rule) && rule.every((option) => fault(option, value, path) !== undefined)
      ? path
      : undefined,
};
