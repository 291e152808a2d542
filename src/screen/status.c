#include "screen/status.h"
#include "base/show.h"
#include "editor/acts/acts.h"
#include "screen/draw.h"
#include "screen/width.h"

enum { PAIR_GAP = 2, RANKS = 4 };

static const char *const state_words[] = {
	[STATE_REST] = "At rest", [STATE_TRAIL] = "Trail", [STATE_PEGGED] = "Pegged",
	[STATE_MARKED] = "Marked", [STATE_QUESTION] = "Question", [STATE_FORM] = "Form",
};

static const char *saved_word(const struct editor *editor)
{
	if (editor->is_looking)
		return "looking only";
	return editor_is_saved(editor) && editor->has_begun ? "saved" : "not saved";
}

static void mirror_words(const struct editor *editor, bool is_roomy, struct text *out)
{
	enum mirror_kind kind = mirror_of(editor->plot).kind;

	if (is_roomy || kind == MIRROR_OFF)
		text_add(out, "mirror ");
	text_add(out, mirror_word(kind));
	if (editor->faults) {
		text_add(out, ", ");
		show_count(out, editor->faults);
		text_add(out, editor->faults == 1 ? " fault" : " faults");
	}
}

/* What Space would lay. */
static void hand_words(const struct editor *editor, struct text *out)
{
	if (editor->is_marked)
		editor_name_size(editor, editor->carried.columns, editor->carried.rows, out);
	else
		editor_name_letter(editor, editor->hand, out);
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
	const char *in_hand;
	struct text saved, mirror;
	int gap, room;
};

static struct head head_of(const struct editor *editor, enum state state, int columns,
	bool is_roomy)
{
	struct head head = { .in_hand = !is_roomy ? "" : editor->is_marked ? "carried " : "hand ",
		.saved = TEXT_EMPTY, .mirror = TEXT_EMPTY, .gap = is_roomy ? 3 : 2 };

	text_print(&head.saved, ", %s", saved_word(editor));
	mirror_words(editor, is_roomy, &head.mirror);
	head.room = columns - width_of(state_words[state]) - width_of(head.saved.bytes) -
		width_of(head.in_hand) - width_of(head.mirror.bytes) - 3 * head.gap;
	return head;
}

static void head_fini(struct head *head)
{
	text_fini(&head->saved);
	text_fini(&head->mirror);
}

void status_draw(const struct editor *editor, const struct layout *layout, enum state state)
{
	const struct area *area = &layout->status;
	struct text hand = TEXT_EMPTY;
	struct head head;
	int column;

	hand_words(editor, &hand);
	head = head_of(editor, state, area->columns, true);
	/* Words and gaps give way before a name is cut. */
	if (width_of(editor->name) + width_of(hand.bytes) > head.room) {
		head_fini(&head);
		head = head_of(editor, state, area->columns, false);
	}
	column = draw_text(area, 0, 0, state_words[state], LOOK_STRONG) + head.gap;
	column = draw_name(area, column, editor->name,
		name_share(editor->name, hand.bytes, head.room));
	column = draw_text(area, 0, column, head.saved.bytes, LOOK_PLAIN) + head.gap;
	column = draw_text(area, 0, column, head.in_hand, LOOK_PLAIN);
	draw_name(area, column, hand.bytes, name_share(hand.bytes, editor->name, head.room));
	draw_right(area, 0, head.mirror.bytes, editor->faults ? LOOK_STRONG : LOOK_PLAIN);
	head_fini(&head);
	text_fini(&hand);
}

void status_message(const struct layout *layout, const char *words)
{
	struct area area = layout->message;
	int rows = width_lines(words, area.columns);

	if (rows > 1) {
		area.row -= rows - 1;
		area.rows = rows;
		draw_clear(&area);
	}
	draw_wrapped(&area, 0, words, LOOK_PLAIN);
}

/* The words of an act's hint, with the step for what arrows do. Nothing where it has none now: the
 * mouse has one while it is in use. */
static void hint_words(const struct editor *editor, const struct act *act, enum state state,
	struct text *out)
{
	if (!act->hints[state] || (act->writes && editor->is_looking) ||
	    (act->id == ACT_MOUSE && !editor->is_pointing))
		return;
	text_add(out, act->hints[state]);
	if (act->id == ACT_ARROW)
		text_print(out, " %d", editor->step);
}

static int pair_width(const char *key, const char *word)
{
	return width_of(key) + 1 + width_of(word);
}

static int draw_pair(const struct area *area, int column, const char *key, const char *word)
{
	column = draw_text(area, 0, column ? column + PAIR_GAP : 0, key, LOOK_STRONG);
	return draw_text(area, 0, column + 1, word, LOOK_PLAIN);
}

/* Which hints there is room for, those of the first ranks before others. */
static void hints_choose(const struct text *words, bool *is_shown, int room)
{
	for (int rank = 1; rank <= RANKS; rank++) {
		for (enum act_id id = ACT_FIRST; id < ACTS; id++) {
			const struct act *act = acts_get(id);
			int width = words[id].length ? PAIR_GAP + pair_width(act->key_name,
				words[id].bytes) : 0;

			if (!width || act->rank != rank || width > room + PAIR_GAP)
				continue;
			is_shown[id] = true;
			room -= width;
		}
	}
}

void status_keys(const struct editor *editor, const struct layout *layout, enum state state)
{
	struct text words[ACTS] = { TEXT_EMPTY };
	bool is_shown[ACTS] = { false };
	int column = 0;

	for (enum act_id id = ACT_FIRST; id < ACTS; id++)
		hint_words(editor, acts_get(id), state, &words[id]);
	hints_choose(words, is_shown, layout->keys.columns);
	for (enum act_id id = ACT_FIRST; id < ACTS; id++) {
		if (is_shown[id])
			column = draw_pair(&layout->keys, column, acts_get(id)->key_name,
				words[id].bytes);
		text_fini(&words[id]);
	}
}

void status_key_words(const struct layout *layout, const char *const *pairs)
{
	int column = 0;

	for (; pairs[0]; pairs += 2)
		column = draw_pair(&layout->keys, column, pairs[0], pairs[1]);
}

void status_standing(const struct editor *editor, struct text *out)
{
	struct rectangle r = editor->is_marked ? editor->marked : editor_pegged(editor);
	int columns = r.right - r.left + 1, rows = r.bottom - r.top + 1;

	if (!editor->is_pegged && !editor->is_marked)
		return;
	text_add(out, editor->is_marked ? "Marked: " : "The rectangle: ");
	editor_name_size(editor, columns, rows, out);
	text_add(out, ", ");
	show_area(out, survey_area((int64_t)columns * rows, plot_cell(editor->plot)),
		plot_units(editor->plot));
	if (editor->is_marked)
		text_add(out, ". A stamp has its top left at the cursor: *");
}
