// The dialog that prepares, in one step, the change which brings an earlier version back. It is signed like any other change.
import { html, render, nothing } from '/pages/lit-html.js';
import { trouble } from '/pages/shell.js';
import * as service from '/pages/chart/service.js';

/** Opens it; whoever opened it has the focus again afterwards. */
export function askBringBack(room, head) {
  const place = Object.assign(document.createElement('dialog'), { id: 'bring-back' });
  place.setAttribute('aria-labelledby', 'bring-back-title');
  place.addEventListener('close', () => place.remove());
  document.querySelector('main').append(place);
  draw(place, room, head, { failed: null, sending: false });
  place.showModal();
  place.querySelector('textarea').focus();
}

function draw(place, room, head, { failed, sending }) {
  const send = async (event) => {
    event.preventDefault();
    const reason = event.target.elements.reason.value;
    draw(place, room, head, { failed: null, sending: true });
    try {
      location.assign(`/changes/${await service.bringBack(room, head.version, reason)}`);
    } catch (refused) {
      draw(place, room, head, { failed: refused, sending: false });
      place.querySelector('textarea').focus();
    }
  };
  render(html`
    <form @submit=${send}>
      <h2 id="bring-back-title">Bring version ${head.version} back</h2>
      <p>This opens a change in which the chart reads as in version ${head.version}, “${head.title}”. It is reviewed and signed
        like any other change; until then nothing changes in the room.</p>
      <div role="alert">${failed ? trouble(failed) : nothing}</div>
      <label class="field">Reason, 10 characters or more; line breaks become spaces
        <textarea name="reason" required minlength="10" maxlength="2000"></textarea></label>
      <div class="row"><button class="first" ?disabled=${sending}>${sending ? 'Preparing the change…' : 'Prepare the change'}</button>
        <button type="button" @click=${() => place.close()}>Leave it</button></div>
    </form>`, place);
}
