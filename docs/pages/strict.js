// What the page's policy refused, for whoever wants to look: it should stay empty.
window.violations = [];
document.addEventListener('securitypolicyviolation', ({ violatedDirective, blockedURI }) => {
  window.violations.push(`${violatedDirective}: ${blockedURI}`);
});
