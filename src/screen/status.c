#include "screen/status.h"
#include "base/utf8.h"
#include "editor/acts/acts.h"
#include "editor/marks.h"
#include "screen/brush.h"
#include "screen/draw.h"
#include "screen/width.h"

enum { PAIR_GAP = 2, RANKS = 4 };

/* Of one width, so that what stands beside stays where it is: that saves bytes. */
static const char *const state_words[] = {
	[STATE_REST] = "Drawing", [STATE_TRAIL] = "Trail  ", [STATE_PEGGED] = "Pegged ",
	[STATE_MARKED] = "Marked ", [STATE_QUESTION] = "Picking", [STATE_FORM] = "Typing ",
};

/* What is spared where names would be cut, each step with those before it: nothing; gaps, and the
 * mirror's own word; the one that leads up to what is in hand; the words of counts, which have the
 * plan's marks instead. */
enum thrift { THRIFT_NONE, THRIFT_GAPS, THRIFT_HAND, THRIFT_MARKS };

/* "2 snags"; "\u25b22". */
static const char *marked_count(const struct report *report, int64_t count, enum mark mark,
	const char *word, enum thrift thrift)
{
	const char *number = plain_count(report, count);
	struct sign sign = mark_sign(mark);
	char bytes[UTF8_MOST + 1] = { sign.plain };

	if (thrift < THRIFT_MARKS)
		return say(report, "%s %s%s", number, word, count == 1 ? "" : "s");
	if (brush_has_unicode())
		utf8_encode(sign.code, bytes);
	return say(report, "%s%s", bytes, number);
}

/* "mirror left-right, 1 fault". */
static const char *mirror_words(const struct editor *editor, const struct report *report,
	enum thrift thrift)
{
	enum mirror_kind kind = mirror_of(editor->plot).kind;
	const char *of = thrift == THRIFT_NONE || kind == MIRROR_OFF ? "mirror " : "";

	if (editor->faults <= 0)
		return say(report, "%s%s", of, mirror_word(kind));
	return say(report, "%s%s%s %s", of, mirror_word(kind), thrift < THRIFT_MARKS ? "," : "",
		marked_count(report, editor->faults, MARK_FAULT, "fault", thrift));
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

/* As many as the page of snags has; "" where there is none, or they are not counted yet. */
static const char *snag_words(const struct editor *editor, const struct report *report,
	enum thrift thrift)
{
	size_t count = editor_is_counted(editor) ? editor->takeoff.snags.count : 0;

	return count == 0 ? "" :
		marked_count(report, (int64_t)count, MARK_SNAG, "snag", thrift);
}

/* What there is around the two names of the first row, and the room left for them. */
struct head {
	const char *in_hand, *saved, *snags, *mirror;
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

/* While a number is typed: what it comes to. */
static const char *state_word(const struct editor *editor, enum state state,
	const struct report *report)
{
	int steps = state <= STATE_MARKED ? editor->steps : 0;

	return !steps ? state_words[state] : say(report, "%d %s: %s", steps,
		steps == 1 ? "step" : "steps",
		exact_length(report, (nm)steps * editor->step * plot_cell(editor->plot)));
}

static struct head head_of(const struct editor *editor, const struct report *report,
	const char *state, int columns, enum thrift thrift)
{
	struct head head = { .in_hand = thrift >= THRIFT_HAND ? "" :
			editor->is_marked ? "carried " : "hand ",
		.saved = saved_words(editor), .snags = snag_words(editor, report, thrift),
		.mirror = mirror_words(editor, report, thrift),
		.gap = thrift == THRIFT_NONE ? 3 : 2 };

	head.room = columns - width_of(state) - width_of(head.saved) -
		width_of(head.in_hand) - width_of(head.mirror) - 3 * head.gap;
	if (*head.snags)
		head.room -= width_of(head.snags) + head.gap;
	return head;
}

void status_draw(const struct editor *editor, const struct layout *layout, enum state state)
{
	const struct area *area = &layout->status;
	struct area before = *area; /* the mirror's words */
	struct arena words = ARENA_EMPTY;
	struct report report = editor_report(editor, &words);
	const char *hand = !editor->is_marked ? plain_letter(&report, editor->hand) :
		plain_cells(&report, editor->carried.ground.columns, editor->carried.ground.rows);
	const char *word = state_word(editor, state, &report);
	enum thrift thrift = THRIFT_NONE;
	struct head head = head_of(editor, &report, word, area->columns, thrift);
	int column;

	/* Words and gaps are shortened before a name is cut. */
	while (width_of(editor->name) + width_of(hand) > head.room && thrift < THRIFT_MARKS)
		head = head_of(editor, &report, word, area->columns, ++thrift);
	column = draw_text(area, 0, 0, word, LOOK_STRONG) + head.gap;
	column = draw_name(area, column, editor->name, name_share(editor->name, hand, head.room));
	column = draw_text(area, 0, column, head.saved, LOOK_PLAIN) + head.gap;
	column = draw_text(area, 0, column, head.in_hand, LOOK_PLAIN);
	draw_name(area, column, hand, name_share(hand, editor->name, head.room));
	draw_right(area, 0, head.mirror, editor->faults > 0 ? LOOK_STRONG : LOOK_PLAIN);
	before.columns -= width_of(head.mirror) + head.gap;
	draw_right(&before, 0, head.snags, LOOK_STRONG);
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

/* The words of an act's hint, with the step for what arrows do; nothing where it has none now. */
static const char *hint_words(const struct editor *editor, const struct act *act, enum state state,
	struct arena *words)
{
	struct report report = editor_report(editor, words);
	const char *hint = act->hints[state];

	if (!hint || (act->writes && editor->is_looking))
		return "";
	if (act->id == ACT_ARROW && editor->step > 1)
		return arena_print(words, "%s %s", hint, exact_length(&report,
			editor->step * plot_cell(editor->plot)));
	return hint;
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
			int width = !*words[id] ? 0 :
				PAIR_GAP + width_of(acts_key(id)) + 1 + width_of(words[id]);

			if (!width || acts_get(id)->rank != rank || width > room + PAIR_GAP)
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
			column = draw_pair(&layout->keys, column, acts_key(id), words[id]);
	arena_clear(&arena);
}

void status_key_words(const struct layout *layout, const char *const *pairs)
{
	int column = 0;

	for (; pairs[0]; pairs += 2)
		column = draw_pair(&layout->keys, column, pairs[0], pairs[1]);
}

/* How many cells are marked: a region's are fewer than those of the rectangle around it. */
static int64_t cells_of(const struct ground *shape)
{
	int64_t count = 0;

	for (size_t i = 0, all = (size_t)shape->columns * (size_t)shape->rows; i < all; i++)
		count += shape->cells[i] != PATCH_NOTHING;
	return count;
}

void status_rectangle(const struct editor *editor, const struct layout *layout)
{
	struct rectangle r = editor->is_marked ? editor->marked : editor_pegged(editor);
	int columns = r.right - r.left + 1, rows = r.bottom - r.top + 1;
	int64_t cells = editor->is_marked ? cells_of(&editor->shape) : (int64_t)columns * rows;
	struct arena words = ARENA_EMPTY;
	struct report report = editor_report(editor, &words);

	if (editor->is_pegged || editor->is_marked)
		status_message(layout, say(&report, "%s: %s, %s.%s",
			editor->is_marked ? "Marked" : "The rectangle",
			plain_cells(&report, columns, rows),
			plain_area(&report, survey_area(cells, plot_cell(editor->plot))),
			editor->is_marked ? " It is shown where a stamp would lie." : ""));
	arena_clear(&words);
}
