/** A recipe as it stands inside an element: a script that no browser runs. */
const SCRIPT = /<script\s+type=(["']?)application\/json\1\s*>([\s\S]*?)<\/script\s*>/i;

/** The text of the recipe in an element's markup. */
export const recipeIn = (markup: string): string | undefined => SCRIPT.exec(markup)?.[2];

/** The same script again; a recipe that was found in one cannot end it. */
export const recipeScript = (recipe: string): string =>
  `  <script type="application/json">${recipe}</script>\n`;
