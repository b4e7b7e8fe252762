import type { Size } from '../../plan/size.js';
import { backing } from '../backing/backing.js';
import { batting } from '../batting/batting.js';
import { binding } from '../binding/binding.js';
import { inField } from '../recipe/inField.js';
import type { ReadRecipe } from '../recipe/schema.js';
import { widthOf } from './fabricTasks.js';
import type { PatternTask } from './task.js';

/** What goes round and behind the finished quilt. */
export function readFinishing(
  recipe: ReadRecipe,
  quilt: Size,
): Pick<PatternTask, 'binding' | 'backing' | 'batting'> {
  const { seam, grid } = recipe;
  const within = (field: string) => (name: string) =>
    name === 'seam' || name === 'grid' || name.startsWith('quilt') ? field : `${field}.${name}`;
  const bound = recipe.binding && {
    ...recipe.binding,
    fabricWidth: widthOf(recipe, recipe.binding.fabric),
  };
  const back = recipe.backing && {
    ...recipe.backing,
    width: widthOf(recipe, recipe.backing.fabric),
  };
  const [first] = [recipe.buying.increment].flat();
  const increment = first === undefined ? {} : { increment: first };
  return {
    binding:
      bound &&
      inField(within('binding'), () => {
        const { fabric, ...spec } = bound;
        return binding({ ...spec, quilt, seam, grid });
      }),
    backing:
      back &&
      inField(within('backing'), () => {
        const { fabric, ...spec } = back;
        return backing({ ...spec, ...increment, quilt, grid });
      }),
    batting:
      recipe.batting &&
      inField(within('batting'), () => batting({ ...recipe.batting, ...increment, quilt, grid })),
  };
}
