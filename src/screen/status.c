#include "screen/status.h"
#include "editor/acts/acts.h"
#include "screen/draw.h"
#include "screen/width.h"

enum { PAIR_GAP = 2, RANKS = 4 };

static const char *const state_words[] = {
	[STATE_REST] = "At rest", [STATE_TRAIL] = "Trail", [STATE_PEGGED] = "Pegged",
	[STATE_MARKED] = "Marked", [STATE_QUESTION] = "Choosing", [STATE_FORM] = "Filling in",
};

static const char *mirror_words(const struct editor *editor, const struct report *report,
	bool is_roomy)
{
	enum mirror_kind kind = mirror_of(editor->plot).kind;
	int64_t faults = editor->faults;

	return say(report, "%s%s%s", is_roomy || kind == MIRROR_OFF ? "mirror " : "",
		mirror_word(kind), faults <= 0 ? "" : say(report, ", %s %s",
		plain_count(report, faults), faults == 1 ? "fault" : "faults"));
}

/* What two names may take of the room they have together: half of it, and what the other leaves. */
static int name_share(const char *name, const char *other, int room)
{
	int wanted = width_of(name), others = width_of(other);
	int most = others < room / 2 ? room - others : room - room / 2;

	return wanted < most ? wanted : most;
}

static int draw_name(const struct area *area, int column, const char *name, int columns)
{
	size_t length = width_cut(name, columns > 0 ? columns : 0);

	return draw_bytes(area, 0, column, name, length, LOOK_PLAIN);
}

/* What there is around the two names of the first row, and the room left for them. */
struct head {
	const char *in_hand, *saved, *mirror;
	int gap, room;
};

static const char *saved_words(const struct editor *editor)
{
	bool is_saved = editor_is_saved(editor) && editor->has_begun;

	if (editor->is_looking)
		return ", looking only";
	if (!editor_has_rescue(editor))
		return is_saved ? ", saved, no rescue" : ", not saved, no rescue";
	return is_saved ? ", saved" : ", not saved";
}

static struct head head_of(const struct editor *editor, const struct report *report,
	enum state state, int columns, bool is_roomy)
{
	struct head head = { .in_hand = !is_roomy ? "" : editor->is_marked ? "carried " : "hand ",
		.saved = saved_words(editor),
		.mirror = mirror_words(editor, report, is_roomy), .gap = is_roomy ? 3 : 2 };

	head.room = columns - width_of(state_words[state]) - width_of(head.saved) -
		width_of(head.in_hand) - width_of(head.mirror) - 3 * head.gap;
	return head;
}

void status_draw(const struct editor *editor, const struct layout *layout, enum state state)
{
	const struct area *area = &layout->status;
	struct arena words = ARENA_EMPTY;
	struct report report = editor_report(editor, &words);
	const char *hand = !editor->is_marked ? plain_letter(&report, editor->hand) :
		plain_cells(&report, editor->carried.ground.columns, editor->carried.ground.rows);
	struct head head = head_of(editor, &report, state, area->columns, true);
	int column;

	/* Words and gaps are shortened before a name is cut. */
	if (width_of(editor->name) + width_of(hand) > head.room)
		head = head_of(editor, &report, state, area->columns, false);
	column = draw_text(area, 0, 0, state_words[state], LOOK_STRONG) + head.gap;
	column = draw_name(area, column, editor->name, name_share(editor->name, hand, head.room));
	column = draw_text(area, 0, column, head.saved, LOOK_PLAIN) + head.gap;
	column = draw_text(area, 0, column, head.in_hand, LOOK_PLAIN);
	draw_name(area, column, hand, name_share(hand, editor->name, head.room));
	draw_right(area, 0, head.mirror, editor->faults > 0 ? LOOK_STRONG : LOOK_PLAIN);
	arena_clear(&words);
}

int status_message_row(const struct layout *layout, const char *words)
{
	int rows = width_lines(words, layout->message.columns);

	return layout->message.row - (rows > 1 ? rows - 1 : 0);
}

void status_message(const struct layout *layout, const char *words)
{
	struct area area = layout->message;

	area.row = status_message_row(layout, words);
	area.rows += layout->message.row - area.row;
	if (area.rows > 1)
		draw_clear(&area);
	draw_wrapped(&area, 0, words, LOOK_PLAIN);
}

/* The words of an act's hint, with the step for what arrows do. Nothing where it has none now: the
 * mouse has one while it is in use. */
static const char *hint_words(const struct editor *editor, const struct act *act, enum state state,
	struct arena *words)
{
	const char *hint = act->hints[state];

	if (!hint || (act->writes && editor->is_looking) ||
	    (act->id == ACT_MOUSE && !editor->is_pointing))
		return "";
	return act->id == ACT_ARROW ? arena_print(words, "%s %d", hint, editor->step) : hint;
}

static int draw_pair(const struct area *area, int column, const char *key, const char *word)
{
	column = draw_text(area, 0, column ? column + PAIR_GAP : 0, key, LOOK_STRONG);
	return draw_text(area, 0, column + 1, word, LOOK_PLAIN);
}

/* Which hints there is room for, those of the first ranks before others. */
static void hints_choose(const char *const *words, bool *is_shown, int room)
{
	for (int rank = 1; rank <= RANKS; rank++) {
		for (enum act_id id = ACT_FIRST; id < ACTS; id++) {
			const struct act *act = acts_get(id);
			int width = !*words[id] ? 0 :
				PAIR_GAP + width_of(act->key_name) + 1 + width_of(words[id]);

			if (!width || act->rank != rank || width > room + PAIR_GAP)
				continue;
			is_shown[id] = true;
			room -= width;
		}
	}
}

void status_keys(const struct editor *editor, const struct layout *layout, enum state state)
{
	const char *words[ACTS];
	struct arena arena = ARENA_EMPTY;
	bool is_shown[ACTS] = { false };
	int column = 0;

	for (enum act_id id = ACT_FIRST; id < ACTS; id++)
		words[id] = hint_words(editor, acts_get(id), state, &arena);
	hints_choose(words, is_shown, layout->keys.columns);
	for (enum act_id id = ACT_FIRST; id < ACTS; id++)
		if (is_shown[id])
			column = draw_pair(&layout->keys, column, acts_get(id)->key_name,
				words[id]);
	arena_clear(&arena);
}

void status_key_words(const struct layout *layout, const char *const *pairs)
{
	int column = 0;

	for (; pairs[0]; pairs += 2)
		column = draw_pair(&layout->keys, column, pairs[0], pairs[1]);
}

void status_rectangle(const struct editor *editor, const struct layout *layout)
{
	struct rectangle r = editor->is_marked ? editor->marked : editor_pegged(editor);
	int columns = r.right - r.left + 1, rows = r.bottom - r.top + 1;
	struct arena words = ARENA_EMPTY;
	struct report report = editor_report(editor, &words);

	if (editor->is_pegged || editor->is_marked)
		status_message(layout, say(&report, "%s: %s, %s%s",
			editor->is_marked ? "Marked" : "The rectangle",
			plain_cells(&report, columns, rows), plain_area(&report,
			survey_area((int64_t)columns * rows, plot_cell(editor->plot))),
			editor->is_marked ? ". It is shown where a stamp would lie" : ""));
	arena_clear(&words);
}
