#include "plot/edit/resize.h"
#include "editor/acts/act_groups.h"
#include "editor/acts/shared.h"
#include "editor/cards/cells.h"
#include "editor/cards/card_ask.h"

/* One more of a list of what goes. */
static void add(struct text *words, const char *part)
{
	text_print(words, "%s%s", words->length ? ", " : "", part);
}

static const char *counted(const struct report *report, int64_t count, const char *one,
	const char *more)
{
	return say(report, "%s %s", plain_count(report, count), count == 1 ? one : more);
}

/* "12 cells of bed, 3 of path, 8 ft of fence, 1 gate, 2 ties"; "" where nothing is lost. */
static const char *loss_words(const struct report *report, const int64_t lost[CLASSES],
	struct fence_loss loss, struct around_loss around)
{
	struct text words = TEXT_EMPTY;

	for (enum plot_class class = 0; class < CLASS_OPEN; class++)
		if (lost[class])
			text_print(&words, "%s%s%s of %s", words.length ? ", " : "",
				plain_count(report, lost[class]), words.length ? "" :
				lost[class] == 1 ? " cell" : " cells", class_word(class));
	if (loss.sides)
		add(&words, say(report, "%s of fence", plain_sides(report, loss.sides)));
	if (loss.gates)
		add(&words, counted(report, loss.gates, "gate", "gates"));
	if (around.service_sides)
		add(&words, say(report, "%s of services",
			plain_sides(report, around.service_sides)));
	if (around.circles)
		add(&words, counted(report, around.circles, "thing kept", "things kept"));
	if (around.ties)
		add(&words, counted(report, around.ties, "tie", "ties"));
	if (around.specimens)
		add(&words, counted(report, around.specimens, "plant", "plants"));
	if (around.has_drop)
		add(&words, "the drop");
	if (around.has_level)
		add(&words, "the finished level");
	return say_text(report, &words);
}

/* Open ground is given up without a question. */
static bool may_lose(struct editor *editor, const struct margins *margins)
{
	static const char *const answers[] = { "Leave the plan as it is", "Crop it all the same" };
	struct question question = { .answers = answers, .count = 2 };
	struct report report = editor_report(editor, &editor->words);
	int64_t lost[CLASSES];
	const char *words;

	resize_loss(editor->plot, margins, lost);
	words = loss_words(&report, lost, resize_fence_loss(editor->plot, margins),
		resize_around_loss(editor->plot, margins));
	question.text = say(&report, "%s would go.", words);
	return !*words || editor->asker->choose(editor->asker, &question) == 1;
}

void act_say_size(struct editor *editor, bool had_axis)
{
	const struct ground *ground = &editor->plot->ground;
	bool has_axis = block_value(&editor->plot->details.head, HEAD_AXIS)->set;
	struct report report = editor_report(editor, &editor->words);

	editor_say(editor, "The plan is %s now, %d x %d cells.%s%s",
		plain_cells(&report, ground->columns, ground->rows), ground->columns, ground->rows,
		had_axis && !has_axis ? " The axis fell outside; both stand in the middle." : "",
		!editor_faults(editor) ? "" : say(&report, " The mirror has %s %s.",
		plain_count(&report, editor->faults), editor->faults == 1 ? "fault" : "faults"));
}

/* margins must fit. */
static void resize(struct editor *editor, const struct margins *margins)
{
	bool had_axis = block_value(&editor->plot->details.head, HEAD_AXIS)->set;

	if (!may_lose(editor, margins)) {
		editor_say(editor, "The plan is left as it is.");
		return;
	}
	resize_plot(editor_edit(editor), margins);
	editor->cursor.x += margins->left;
	editor->cursor.y += margins->top;
	editor->cursor = ground_nearest(&editor->plot->ground, editor->cursor);
	editor->is_pegged = editor->is_trailing = editor->said_outside = false;
	editor_drop_mark(editor);
	if (editor_stroke(editor))
		act_say_size(editor, had_axis);
	else
		editor_say(editor, "The plan has that size already.");
}

enum { LEFT, TOP, RIGHT, BOTTOM, SIDES };

struct sizing {
	struct editor *editor;
	struct margins margins;
};

/* How far a side may move at most; what all of them come to is seen when the card is taken. */
static const struct cells side_cells = { .least = 1 - SIDE_MOST, .most = SIDE_MOST - 1 };

static bool side_read(const struct card *card, int side, int *margin, struct fault *fault)
{
	const struct sizing *sizing = card->owner;
	struct cells cells = side_cells;
	bool is_read = cells_read(card, side, plot_cell(sizing->editor->plot), &cells, fault);

	*margin = cells.count;
	return is_read;
}

static bool side_check(const struct card *card, int side, const struct value *value,
	struct fault *fault)
{
	const struct sizing *sizing = card->owner;
	struct cells cells = side_cells;

	return cells_check(card, side, value, plot_cell(sizing->editor->plot), &cells, fault);
}

static bool sides_accept(struct card *card, struct fault *fault)
{
	struct sizing *sizing = card->owner;
	const struct ground *ground = &sizing->editor->plot->ground;
	struct margins m;

	if (!side_read(card, LEFT, &m.left, fault) ||
	    !side_read(card, TOP, &m.top, fault) ||
	    !side_read(card, RIGHT, &m.right, fault) ||
	    !side_read(card, BOTTOM, &m.bottom, fault))
		return false;
	if (!resize_fits(ground, &m))
		return fault_set(fault, LEFT,
			"The plan would be %d x %d cells; it has 1 to %d each way.",
			ground->columns + m.left + m.right, ground->rows + m.top + m.bottom,
			SIDE_MOST);
	sizing->margins = m;
	return true;
}

static void by_measure(struct editor *editor)
{
	static const char *const labels[SIDES] = { "Left", "Top", "Right", "Bottom" };
	static const char *const meanings[SIDES] = {
		"How much is added at the left; with a minus, cut off.",
		"How much is added at the top; with a minus, cut off.",
		"How much is added at the right; with a minus, cut off.",
		"How much is added at the bottom; with a minus, cut off." };
	struct sizing sizing = { .editor = editor };
	struct field_spec fields[SIDES];

	for (int i = 0; i < SIDES; i++)
		fields[i] = (struct field_spec){ .label = labels[i], .rule = &cells_rule,
			.meaning = meanings[i], .is_cells = true, .span = SPAN_PLAN,
			.unset = "as it is" };
	if (card_ask(editor, &(struct card_spec){ .title = "Grow; with a minus, crop",
			.done = "set the size", .fields = fields, .count = SIDES,
			.accept = sides_accept, .check = side_check, .owner = &sizing }))
		resize(editor, &sizing.margins);
}

static void act_crop_to_mark(struct editor *editor)
{
	const struct ground *ground = &editor->plot->ground;
	struct rectangle r = editor->marked;

	if (!act_has_mark(editor))
		return;
	resize(editor, &(struct margins){ -r.left, -r.top, r.right + 1 - ground->columns,
		r.bottom + 1 - ground->rows });
}

static void act_size(struct editor *editor)
{
	enum { BY_MEASURE, TO_MARK = 5, ANSWERS };
	static const char *const answers[ANSWERS] = { "Each side by measure",
		"Crop all left of the cursor", "Crop all above the cursor",
		"Crop all right of the cursor", "Crop all below the cursor", "Crop to the mark" };
	const struct ground *ground = &editor->plot->ground;
	const struct margins crops[TO_MARK] = { [1] = { .left = -editor->cursor.x },
		{ .top = -editor->cursor.y }, { .right = editor->cursor.x + 1 - ground->columns },
		{ .bottom = editor->cursor.y + 1 - ground->rows } };
	struct report report = editor_report(editor, &editor->words);
	const struct question question = { .answers = answers,
		.count = editor->is_marked ? ANSWERS : TO_MARK,
		.text = say(&report, "The plan is %s. Grow or crop it:",
			plain_cells(&report, ground->columns, ground->rows)) };
	int answer = editor->asker->choose(editor->asker, &question);

	if (answer == BY_MEASURE)
		by_measure(editor);
	else if (answer == TO_MARK)
		act_crop_to_mark(editor);
	else if (answer != ANSWER_NONE)
		resize(editor, &crops[answer]);
}

static const struct act acts[] = {
	{ .id = ACT_SIZE, .key_name = "!", .name = "Grow or crop",
		.wish = "make the plan larger or smaller",
		.words = "size resize taller higher height bigger add",
		.writes = true, .run = act_size },
	{ .id = ACT_CROP_TO_MARK, .key_name = "!", .name = "Crop to the mark",
		.wish = "keep only what is marked",
		.words = "cut trim resize", .writes = true, .run = act_crop_to_mark },
};
const struct act_group acts_of_size = ACT_GROUP("Plot", acts);
