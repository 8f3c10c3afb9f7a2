// Change and see: while a slider moves, the plan in hand; on release a rough answer, then the full one.
import { state, $, ask, show } from './page.js';

const copy = () => JSON.parse(JSON.stringify({ levers: state.levers, fixes: state.fixes }));
const keep = () => { before = copy(); sessionStorage.setItem('state', JSON.stringify(state)); };
let before = copy();
let asked = false;
let again = false;
let soon;

function say(input) {
  const value = Number(input.value);
  const sign = input.dataset.unit === '%' && value > 0 ? '+' : '';
  input.nextElementSibling.value = sign + value.toLocaleString('en') + ' ' + input.dataset.unit;
  input.setAttribute('aria-valuetext', input.nextElementSibling.value);
}
async function hand() {
  again = asked;
  if (asked) return;
  asked = true;
  const answer = await ask('/hand', { id: $('[data-id]').dataset.id });
  asked = false;
  if (answer.status === 200 && $('#hand')) $('#hand').innerHTML = answer.text;
  if (again) hand();
}
async function renew() {
  state.past.push(before);
  keep();
  if (await show({ rough: true, part: true }, false)) show({ part: true }, false);
}
document.addEventListener('placed', () => document.querySelectorAll('[data-lever]').forEach(say));
document.addEventListener('input', event => {
  const { lever, base } = event.target.dataset;
  if (!lever) return;
  if (Number(event.target.value) === Number(base)) delete state.levers[lever];
  else state.levers[lever] = Number(event.target.value);
  say(event.target);
  hand();
});
document.addEventListener('change', event => {
  const { lever, fix, year } = event.target.dataset;
  const name = fix ?? year;
  if (name !== undefined) {
    const [what, when] = event.target.closest('.fix').querySelectorAll('select');
    if (what.value) state.fixes[name] = what.value + (when.value ? '@' + when.value : '');
    else delete state.fixes[name];
  }
  clearTimeout(soon); // arrow keys come one after the other
  if (lever || name !== undefined) soon = setTimeout(renew, 300);
});
document.addEventListener('click', event => {
  const back = event.target.closest('[data-back]');
  if (!back && !(event.target.closest('[data-undo]') && state.past.length)) return;
  if (back) state.past.push(copy());
  Object.assign(state, back ? { levers: {}, fixes: {} } : state.past.pop());
  keep();
  show({}, false);
});
