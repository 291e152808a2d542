#include "editor/acts/act_groups.h"
#include "editor/acts/shared.h"
#include "report/words/snag_words.h"

/* The one after the snag that the cursor stands at; the first comes after the last. From elsewhere
 * it is the one that was gone to last, or has its number now that it is cured. There is one. */
static size_t next_snag(const struct editor *editor)
{
	const struct snag_list *snags = &editor->takeoff.snags;
	size_t last = editor->snag < snags->count ? editor->snag : 0;
	const struct place *cell = &snags->list[last].cell;
	size_t here = snag_at(snags, editor->cursor, 0);

	if (cell->x == editor->cursor.x && cell->y == editor->cursor.y)
		here = last;
	return here < snags->count ? (here + 1) % snags->count : last;
}

static void act_next_snag(struct editor *editor)
{
	const struct snag_list *snags = &editor->takeoff.snags;
	struct report report = editor_report(editor, &editor->words);
	const struct snag *snag;

	if (!act_count(editor))
		return;
	if (snags->count == 0) {
		editor_say(editor, "There is no snag.");
		return;
	}
	editor->snag = next_snag(editor);
	snag = &snags->list[editor->snag];
	editor->cursor = snag->cell;
	editor_say(editor, "Snag %s of %s: %s %s",
		plain_count(&report, (int64_t)editor->snag + 1),
		plain_count(&report, (int64_t)snags->count), snag_sentence(&report, snag),
		snag_cure_sentence(&report, snag));
}

static const struct act acts[] = {
	{ .id = ACT_NEXT_SNAG, .keys = ONE_KEY(','), .key_name = ",", .name = "Next snag",
		.wish = "go to a snag, see what cures it",
		.words = "warning problem next error", .run = act_next_snag },
};
const struct act_group acts_of_snags = ACT_GROUP("Figures", acts);
