const ENTITIES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** A text in which no sign is one of HTML or XML. */
export const escaped = (text: string): string =>
  text.replace(/[&<>"']/g, (sign) => ENTITIES[sign] ?? sign);
