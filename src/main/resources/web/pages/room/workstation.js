// What is set once at this screen: the room's token, whether keys count anywhere, and when the page clears by itself.
import { html, nothing } from '/pages/lit-html.js';
import { anywhere, setAnywhere } from './keys.js';
import { CHOICES, minutes, setMinutes } from './idle.js';

/** Asks for the token, in place; `why` says what is wrong with the one before. */
export function tokenForm(why, given, cancel) {
  const submit = (event) => {
    event.preventDefault();
    const text = event.target.elements.token.value.trim();
    if (text !== '') given(text);
  };
  return html`
    <form class="token panel" @submit=${submit} data-own-keys>
      <div role="alert">${why ? html`<p class="tell blocking"><strong>${why.title}</strong> ${why.text}</p>` : nothing}</div>
      <label class="field">This workstation's room token, from your administrator
        <input name="token" type="password" autocomplete="off" spellcheck="false" required></label>
      <div class="row"><button class="first">Keep it at this screen</button>
        ${cancel ? html`<button type="button" @click=${cancel}>Not now</button>` : nothing}</div>
      <p class="small">It opens this room's chart for reading and nothing else. It is asked once.</p>
    </form>`;
}

/** Asks whether the token of a link that somebody opened may replace the kept one. */
export const replaceForm = (replace, keep) => html`
  <section class="token panel" aria-labelledby="replace-token">
    <h2 id="replace-token">Replace this workstation's token?</h2>
    <p>The address that was opened brings another token for this room than the one kept here. The service accepts it.
      Replace it only if your administrator gave you that address.</p>
    <div class="row"><button type="button" class="first" @click=${keep}>Keep the token that is here</button>
      <button type="button" @click=${replace}>Replace it</button></div>
  </section>`;

export const settings = (act) => html`
  <div class="settings">
    <h2 id="workstation-title">This workstation</h2>
    <label class="tick"><input type="checkbox" .checked=${anywhere()} @change=${(event) => setAnywhere(event.target.checked)}>
      Letters and digits count anywhere on the page</label>
    <label class="field">Clear the page without a touch or key after
      <select @change=${(event) => { setMinutes(event.target.value); act.restartIdle(); }}>
        ${CHOICES.map((choice) => html`<option value=${choice} ?selected=${choice === minutes()}>${choice} minutes</option>`)}
      </select></label>
    <p><button type="button" @click=${act.changeToken}>Change the room token</button></p>
    <form method="dialog"><button class="first">Done</button></form>
  </div>`;
