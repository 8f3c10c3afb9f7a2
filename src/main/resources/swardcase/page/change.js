// Change and see: sliders and choices. While a slider moves, the plan in hand; on release a rough
// answer, then the full one. What is newest wins.
import { state, $, ask, show, view, place } from './page.js';

const say = (input) => {
  const value = Number(input.value);
  const sign = input.dataset.unit === '%' && value > 0 ? '+' : '';
  input.nextElementSibling.value = sign + value.toLocaleString('en') + ' ' + input.dataset.unit;
  input.setAttribute('aria-valuetext', input.nextElementSibling.value);
};
const keep = () => sessionStorage.setItem('state', JSON.stringify(state));
const copy = () => JSON.parse(JSON.stringify({ levers: state.levers, fixes: state.fixes }));
let before = copy();
let handAsked = false;
let handAgain = false;
let soon;

async function hand() {
  handAgain = handAsked;
  if (handAsked) return;
  handAsked = true;
  const answer = await ask('/hand', { id: $('[data-id]').dataset.id });
  handAsked = false;
  if (answer.status === 200 && $('#hand')) $('#hand').innerHTML = answer.text;
  if (handAgain) hand();
}

/** Works out the answer anew: rough first, then in full, below the sliders. */
export async function renew() {
  state.past.push(before);
  before = copy();
  keep();
  for (const rough of [true, false]) {
    if (!await show({ rough, part: true }, false)) return;
  }
}

async function set(levers, fixes) {
  Object.assign(state, { levers, fixes });
  before = copy();
  keep();
  await show({}, false);
}

document.addEventListener('placed', () => document.querySelectorAll('[data-lever]').forEach(say));
document.addEventListener('input', event => {
  const input = event.target;
  if (!input.dataset.lever) return;
  if (input.value === String(Number(input.dataset.base))) delete state.levers[input.dataset.lever];
  else state.levers[input.dataset.lever] = Number(input.value);
  say(input);
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
  if (event.target.closest('[data-undo]') && state.past.length) {
    const { levers, fixes } = state.past.pop();
    set(levers, fixes);
  } else if (event.target.closest('[data-back]')) {
    state.past.push(copy());
    set({}, {});
  }
});
