// The page: which view is shown, what the user has changed, and what the server says of it.
// Every request carries all changes; the server remembers none.
export const state = JSON.parse(sessionStorage.getItem('state') || '{"levers":{},"fixes":{},"past":[]}');
export const $ = (selector, within = document) => within.querySelector(selector);
export const main = $('#main');
const dialog = $('#how');
let asking = 0;

/** Asks the server; the answer is its text, and whether all was well. */
export async function ask(name, question = {}) {
  const body = JSON.stringify({ levers: state.levers, fixes: state.fixes, ...question });
  const answer = await fetch(name, { method: 'POST', headers: { 'Content-Type': 'application/json' }, body });
  return { ok: answer.ok, status: answer.status, text: await answer.text() };
}
function says(text, done) {
  $('#says').textContent = text;
  for (const id of ['#done', '#drop']) $(id).hidden = done === undefined;
  if (done !== undefined) $('#done').value = done;
}
/** Waits for an answer and tells how far it is. */
async function waited(promise) {
  const mine = ++asking;
  const timer = setInterval(async () => {
    const done = Number((await ask('/progress')).text);
    if (mine === asking) says('Working it out: ' + Math.round(100 * done) + ' %', done);
  }, 400);
  try {
    return await promise;
  } finally {
    clearInterval(timer);
    if (mine === asking && ++asking) says('');
  }
}
/** Shows the view of the address, or a part of it with new changes. */
export async function show(question = {}, focus = true) {
  const name = location.hash.slice(1) || 'answer';
  for (const link of document.querySelectorAll('nav a')) {
    if (link.hash === '#' + name) link.setAttribute('aria-current', 'page');
    else link.removeAttribute('aria-current');
  }
  const answer = await waited(ask('/view', { view: name, ...question }));
  if (answer.status === 204 || name !== (location.hash.slice(1) || 'answer')) return false;
  if (!answer.ok && answer.status !== 422) return says(answer.text);
  place(question.part && $('#result') || main, answer.text, focus);
  main.dataset.view = name;
  return answer.ok;
}
/** Puts HTML of the server's in a place; what was open, typed or in focus there stays so. */
function place(where, html, focus) {
  const open = [...where.querySelectorAll('details[open] > summary .name')].map(name => name.textContent);
  const typed = [...where.querySelectorAll('[data-answer]')].map(input => [input.id, input.value]);
  const at = where.contains(document.activeElement) && document.activeElement.id;
  where.innerHTML = html;
  for (const name of where.querySelectorAll('summary .name')) if (open.includes(name.textContent)) name.closest('details').open = true;
  for (const [id, value] of typed) if (document.getElementById(id)) document.getElementById(id).value = value;
  if (focus) ($('h1', where) || where).focus();
  else if (at) document.getElementById(at)?.focus();
  where.dispatchEvent(new CustomEvent('placed', { bubbles: true }));
}
async function explain({ what, paddock }) {
  dialog.innerHTML = (await waited(ask('/how', { what, paddock: Number(paddock) }))).text;
  dialog.showModal();
}
document.addEventListener('click', event => {
  const on = selector => event.target.closest(selector);
  if (on('[data-what]')) explain(on('[data-what]').dataset);
  else if (on('[data-close]')) dialog.close();
  else if (on('[data-skip]')) { event.preventDefault(); main.focus(); }
  else if (on('#drop')) ask('/drop').then(() => says('Dropped.'));
  else if (on('#stop')) ask('/stop').then(() => { document.body.textContent = 'The program has stopped. You can close this window.'; });
});
addEventListener('hashchange', () => show());
setInterval(() => ask('/alive').catch(() => says('The program has stopped: start it again and open its new address.')), 60000);
show({}, false);
