import { settingsSchema } from '../clinical/settings-schema.ts';

interface Shape {
  readonly type?: string;
  readonly description?: string;
  readonly enum?: readonly unknown[];
  readonly minimum?: number;
  readonly maximum?: number;
  readonly pattern?: string;
  readonly items?: { readonly examples?: readonly string[] };
  readonly properties?: Readonly<Record<string, Shape>>;
}

/** The settings of a clinic as rows of a table, from their schema: key, what it sets, what may stand there. */
export function settingsRows(): string[][] {
  const { properties } = settingsSchema();
  return Object.entries(properties as Readonly<Record<string, Shape>>).flatMap(
    ([section, { description, properties }]) => {
      if (!properties) return [];
      if (section === 'severity')
        return [['`severity.CODE`', description ?? '', '`danger`, `contradiction`, `missing`, `style`, `off`']];
      return Object.entries(properties).map(([key, shape]) => [
        `\`${section}.${key}\``,
        shape.description ?? description ?? '',
        valuesOf(shape),
      ]);
    },
  );
}

function valuesOf({ type, enum: values, minimum, maximum, pattern, items }: Shape): string {
  if (values) return values.map((each) => `\`${each}\``).join(', ');
  if (items) return `a list, such as \`["${items.examples?.[0]}"]\``;
  if (type === 'number') return `a number, ${minimum} to ${maximum}`;
  return type === 'boolean' ? '`true` or `false`' : pattern ? 'a time, such as `"6-8 weeks"`' : 'text';
}
