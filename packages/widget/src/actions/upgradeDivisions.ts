/**
 * Makes elements of `<div data-eighths="log-cabin" data-finished="9">`: editors that strip unknown tags
 * leave such a thing alone. What stands in the division is shown until then, and stays in the element
 * for where no script runs.
 */
export function upgradeDivisions(name: string): void {
  const upgrade = (): void => {
    for (const division of document.querySelectorAll<HTMLElement>(`[data-eighths="${name}"]`)) {
      const element = document.createElement(`eighths-${name}`);
      for (const { name: attribute, value } of division.attributes) {
        const setting = /^data-(?!eighths$)(.+)$/.exec(attribute)?.[1];
        if (setting !== undefined) element.setAttribute(setting, value);
      }
      element.append(...division.childNodes);
      // A second copy of the file finds nothing left to do.
      division.removeAttribute('data-eighths');
      division.append(element);
    }
  };
  if (typeof document === 'undefined') return;
  upgrade();
  // The script may stand above what it is for.
  if (document.readyState === 'loading') {
    document.addEventListener('DOMContentLoaded', upgrade, { once: true });
  }
}
