// The frame of every page for people: masthead with the way to the others, who is signed in, the theme, cautions, and the sign-in
// that comes up in place, over whatever is being typed, when the session is over.
import { html, render, nothing } from '/pages/lit-html.js';
import * as api from '/pages/api.js';
import { INVENTED } from '/pages/words.js';

const PLACES = [
  ['/', 'Rooms'],
  ['/changes', 'Changes'],
  ['/sheets', 'Sheets'],
  ['/audit', 'Audit'],
];
const CAUTION = 'Supports, never replaces, your judgement: identify the patient, justify the exposure, check pregnancy status per site '
  + 'policy, keep the dose as low as reasonably achievable, follow local rules and the medical physicist. Drives no generator, keeps no patient data.';

const page = { site: null, person: null, asking: null, refused: '', stranger: null, left: null, stillIn: '' };
let listeners = [];

/** Who is signed in: `{personId, name, printedName, role}`, or null. */
export const person = () => page.person;

/** `{name, lengthUnit, patientGroups}`; null before anybody signed in. */
export const site = () => page.site;

/** Called with the person now, and whenever somebody signs in or out. */
export function whenPersonChanges(listener) {
  listeners.push(listener);
}

/**
 * Draws the frame around the `<main>` of the page, asks for a sign-in where nobody is, and resolves when person and site are known.
 * With `{signIn: false}` nobody is asked: the person may be null.
 */
export async function start({ signIn = true } = {}) {
  document.body.prepend(Object.assign(document.createElement('header'), { className: 'masthead' }));
  document.querySelector('.masthead').after(Object.assign(document.createElement('div'), { className: 'whose', ariaLive: 'assertive' }));
  document.body.append(Object.assign(document.createElement('footer'), { className: 'foot' }));
  document.body.append(document.createElement('dialog'));
  render(html`<p>${CAUTION}</p>`, document.querySelector('.foot'));
  draw();
  api.whenSignInIsNeeded(askForSignIn);
  api.whenSomebodyElse({ elsewhere: strangerElsewhere, here: (left) => { page.left = left; draw(); } });
  try {
    page.person = (await api.get('/session')).data;
    api.belongTo(page.person);
  } catch (failed) {
    if (!(failed instanceof api.Problem)) throw failed;
    if (signIn) await askForSignIn();
  }
  if (page.person) await welcome();
  draw();
}

async function welcome() {
  page.site ??= (await api.get('/site')).data;
  draw();
  listeners.forEach((listener) => listener(page.person));
}

/** Brings the sign-in up; resolves when somebody is signed in. Several callers wait for the same one. */
export function askForSignIn() {
  page.asking ??= new Promise((done) => {
    const dialog = document.querySelector('body > dialog');
    page.refused = '';
    drawSignIn(dialog, async (name, password) => {
      const answer = await api.post('/session', { name, password });
      api.begin(answer.data);
      Object.assign(page, { person: answer.data, stranger: null, left: null, stillIn: '' });
      dialog.close();
      page.asking = null;
      done();
      await welcome();
    });
    dialog.showModal();
  });
  return page.asking;
}

function drawSignIn(dialog, signIn) {
  const submit = async (event) => {
    event.preventDefault();
    const form = event.target;
    try {
      await signIn(form.elements.name.value, form.elements.password.value);
      form.reset();
    } catch (failed) {
      page.refused = failed.message;
      form.elements.password.value = '';
      drawSignIn(dialog, signIn);
      form.elements.password.focus();
    }
  };
  dialog.setAttribute('aria-labelledby', 'sign-in');
  dialog.oncancel = (event) => event.preventDefault();
  render(html`
    <form @submit=${submit}>
      <h2 id="sign-in">Sign in</h2>
      ${page.person && !page.stranger ? html`<p>Your session is over. What you typed is still here.</p>` : nothing}
      <div role="alert">${page.refused ? html`<p class="tell blocking"><strong>Not signed in.</strong>${page.refused}</p>` : nothing}</div>
      <label class="field">Name<input name="name" autocomplete="username" required .value=${page.person?.name ?? ''}></label>
      <label class="field">Password<input name="password" type="password" autocomplete="current-password" required></label>
      <div class="row"><button class="first">Sign in</button> <a href="/">Back to the rooms</a></div>
    </form>`, dialog);
}

async function signOut() {
  try {
    await api.remove('/session');
  } catch (failed) {
    if (failed instanceof api.SomebodyElse) return; // theirs is not ended from here
    if (failed.status !== 401) {
      page.stillIn = failed.message;
      draw();
      return;
    }
  }
  api.end();
  location.assign('/');
}

/** Null where the owner of this page is the one who is signed in again, or nobody is. */
function strangerElsewhere(stranger) {
  const back = page.stranger !== null && stranger === null;
  page.stranger = stranger;
  draw();
  if (back) welcome();
}

/** Whose page this is, where that is not plain. */
const whose = () => html`
  ${page.stranger ? html`<div class="tell blocking"><strong>Somebody else signed in at this browser: ${page.stranger.printedName}.</strong>
    This page belongs to ${page.person?.printedName ?? 'nobody'}: what is typed here is not sent, and stays.
    <button type="button" @click=${askForSignIn}>Sign in again as yourself</button>
    <button type="button" @click=${() => location.reload()}>Go on as ${page.stranger.printedName}</button></div>` : nothing}
  ${page.stillIn ? html`<div class="tell blocking"><strong>You are still signed in.</strong>${page.stillIn}
    <button type="button" @click=${signOut}>Sign out</button> <button type="button" @click=${askForSignIn}>Sign in again first</button></div>` : nothing}
  ${page.left ? html`<p class="tell caution"><strong>Not sent.</strong>What ${page.left.printedName} typed was not sent under your name.
    It stays in this browser: when they sign in here again, they find it.</p>` : nothing}`;

function changeTheme() {
  const next = document.documentElement.dataset.theme === 'dim' ? 'light' : 'dim';
  document.documentElement.dataset.theme = next;
  localStorage.setItem('wallchart.theme', next);
  draw();
  window.dispatchEvent(new Event('themechange'));
}

function draw() {
  const dim = document.documentElement.dataset.theme === 'dim';
  const here = location.pathname;
  render(html`
    <a class="name" href="/">Wallchart</a>
    ${page.site ? html`<span>${page.site.name}</span>` : nothing}
    ${page.site?.invented ? html`<strong class="mark invented">${INVENTED}</strong>` : nothing}
    <nav aria-label="Pages">
      ${PLACES.map(([path, name]) => html`<a href=${path} aria-current=${here === path || (path !== '/' && here.startsWith(path)) ? 'page' : nothing}>${name}</a>`)}
    </nav>
    <div class="who">
      ${page.person ? html`<span>${page.person.printedName} (${page.person.role})</span>` : nothing}
      <button type="button" aria-pressed=${dim} @click=${changeTheme}>Dim</button>
      ${page.person
        ? html`<button type="button" @click=${signOut}>Sign out</button>`
        : html`<button type="button" @click=${askForSignIn}>Sign in</button>`}
    </div>`, document.querySelector('.masthead'));
  render(whose(), document.querySelector('.whose'));
}

/** What went wrong, for people; for a place with `role="alert"`. */
export function trouble(failed) {
  return html`<p class="tell blocking"><strong>That did not work.</strong>${failed.message}
    ${failed.errors?.length ? html`<ul>${failed.errors.map((error) => html`<li><code>${error.pointer ?? ''}</code> ${error.detail}</li>`)}</ul>` : nothing}</p>`;
}
