package wallchart.signoff;

import wallchart.store.Tx;

/** Takes the newest version as what the author saw, for every edit that does not conflict with it. */
final class Rebasing {

    private final Tx tx;
    private final Proposal proposal;
    private final EditStore edits = new EditStore();

    Rebasing(Tx tx, Proposal proposal) {
        this.tx = tx;
        this.proposal = proposal;
    }

    void run() {
        long change = proposal.change().id();
        proposal.edits().rows().stream()
                .filter(edit -> !isMoved(edit.key().toString()))
                .forEach(edit -> edits.put(tx, change, edit.on(proposal.onVersion())));
        proposal.edits()
                .adjustments()
                .filter(edit -> !isMoved(Proposal.ADJUSTMENTS))
                .ifPresent(
                        edit -> edits.put(tx, change, new Edits.AdjustmentsEdit(edit.wanted(), proposal.onVersion())));
    }

    private boolean isMoved(String key) {
        return proposal.conflicts().contains(key);
    }
}
