#include "base/show.h"
#include "plot/edit/resize.h"
#include "editor/acts/choice.h"
#include "editor/acts/groups.h"
#include "editor/acts/shared.h"
#include "editor/sheets/cells.h"
#include "editor/sheets/sheet_ask.h"

/* ---- What falls outside
 * ------------------------------------------------------------------------- */

/* "12 cells of bed, 3 of path". */
static void cells_add(struct text *out, const int64_t lost[CLASSES])
{
	for (int class = 0; class < CLASS_OPEN; class++) {
		bool is_first = out->length == 0;

		if (!lost[class])
			continue;
		text_add(out, is_first ? "" : ", ");
		show_count(out, lost[class]);
		if (is_first)
			text_add(out, lost[class] == 1 ? " cell" : " cells");
		text_print(out, " of %s", class_word((enum plot_class)class));
	}
}

/* "8 ft of fence, 1 gate". */
static void fence_add(struct text *out, const struct plot *plot, struct fence_loss loss)
{
	if (loss.sides) {
		text_add(out, out->length ? ", " : "");
		show_length(out, loss.sides * plot_cell(plot), plot_units(plot));
		text_add(out, " of fence");
	}
	if (loss.gates) {
		text_add(out, out->length ? ", " : "");
		show_count(out, loss.gates);
		text_add(out, loss.gates == 1 ? " gate" : " gates");
	}
}

/* Open ground is given up without a question. */
static bool may_lose(struct editor *editor, const struct margins *margins)
{
	static const char *const answers[] = { "Leave the plan as it is", "Crop it all the same" };
	struct question question = { .answers = answers, .count = 2 };
	int64_t lost[CLASSES];
	struct text words = TEXT_EMPTY;
	bool may;

	resize_loss(editor->plot, margins, lost);
	cells_add(&words, lost);
	fence_add(&words, editor->plot, resize_fence_loss(editor->plot, margins));
	if (!words.length)
		return true;
	text_add(&words, " would go.");
	question.text = words.bytes;
	may = editor->asker->choose(editor->asker, &question) == 1;
	text_fini(&words);
	return may;
}

/* ---- Growing and cropping
 * ----------------------------------------------------------------------- */

/* The size, and what has become of the mirror. */
static void say_size(struct editor *editor, bool had_axis)
{
	const struct ground *ground = &editor->plot->ground;
	bool has_axis = block_value(&editor->plot->details.head, HEAD_AXIS)->set;
	struct text words = TEXT_EMPTY;

	editor_refresh(editor);
	text_add(&words, "The plan is ");
	editor_name_size(editor, ground->columns, ground->rows, &words);
	text_print(&words, " now, %d x %d cells.%s", ground->columns, ground->rows,
		had_axis && !has_axis ? " The axis fell outside; both stand in the middle." : "");
	if (editor->faults) {
		text_add(&words, " The mirror has ");
		show_count(&words, editor->faults);
		text_add(&words, editor->faults == 1 ? " fault." : " faults.");
	}
	editor_say(editor, "%s", words.bytes);
	text_fini(&words);
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
		say_size(editor, had_axis);
	else
		editor_say(editor, "The plan has that size already.");
}

/* ---- By measure
 * --------------------------------------------------------------------------------- */

enum { LEFT, TOP, RIGHT, BOTTOM, SIDES };

struct sizing {
	struct editor *editor;
	struct margins margins;
};

static bool side_read(const struct sheet *sheet, int side, int *margin, struct fault *fault)
{
	const struct sizing *sizing = sheet->owner;
	struct cells cells = { .least = -SIDE_MOST, .most = SIDE_MOST };
	bool is_read = cells_read(sheet, side, plot_cell(sizing->editor->plot), &cells, fault);

	*margin = cells.count;
	return is_read;
}

static bool side_check(const struct sheet *sheet, int side, const struct value *value,
	struct fault *fault)
{
	int margin;

	(void)value;
	return side_read(sheet, side, &margin, fault);
}

static bool sides_accept(struct sheet *sheet, struct fault *fault)
{
	struct sizing *sizing = sheet->owner;
	const struct ground *ground = &sizing->editor->plot->ground;
	struct margins m;

	if (!side_read(sheet, LEFT, &m.left, fault) ||
	    !side_read(sheet, TOP, &m.top, fault) ||
	    !side_read(sheet, RIGHT, &m.right, fault) ||
	    !side_read(sheet, BOTTOM, &m.bottom, fault))
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
	struct sizing sizing = { .editor = editor };
	struct field_spec fields[SIDES];

	for (int i = 0; i < SIDES; i++)
		fields[i] = (struct field_spec){ .label = labels[i], .rule = &cells_rule,
			.unset = "as it is" };
	if (sheet_ask(editor, &(struct sheet_spec){ .title = "Grow; with a minus, crop",
			.done = "set the size", .fields = fields, .count = SIDES,
			.accept = sides_accept, .check = side_check, .owner = &sizing }))
		resize(editor, &sizing.margins);
}

/* ---- To the cursor, to the mark
 * ----------------------------------------------------------------- */

static void crop_left(struct editor *editor)
{
	resize(editor, &(struct margins){ .left = -editor->cursor.x });
}

static void crop_top(struct editor *editor)
{
	resize(editor, &(struct margins){ .top = -editor->cursor.y });
}

static void crop_right(struct editor *editor)
{
	int columns = editor->plot->ground.columns;

	resize(editor, &(struct margins){ .right = editor->cursor.x + 1 - columns });
}

static void crop_bottom(struct editor *editor)
{
	int rows = editor->plot->ground.rows;

	resize(editor, &(struct margins){ .bottom = editor->cursor.y + 1 - rows });
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
	static const struct choice choices[] = {
		{ .words = "Each side by measure", .run = by_measure },
		{ .words = "Crop all left of the cursor", .run = crop_left },
		{ .words = "Crop all above the cursor", .run = crop_top },
		{ .words = "Crop all right of the cursor", .run = crop_right },
		{ .words = "Crop all below the cursor", .run = crop_bottom },
		{ .words = "Crop to the mark", .act = ACT_CROP_TO_MARK },
	};
	enum { CHOICES = sizeof choices / sizeof *choices };
	struct text words = TEXT_EMPTY;

	text_add(&words, "The plan is ");
	editor_name_size(editor, editor->plot->ground.columns, editor->plot->ground.rows, &words);
	text_add(&words, ". Grow or crop it:");
	choice_ask(editor, words.bytes, choices, editor->is_marked ? CHOICES : CHOICES - 1);
	text_fini(&words);
}

static const struct act acts[] = {
	{ .id = ACT_SIZE, .keys = ONE_KEY('^'), .key_name = "^", .name = "Grow or crop",
		.wish = "make the plan larger or smaller", .writes = true, .run = act_size },
	{ .id = ACT_CROP_TO_MARK, .key_name = "^", .name = "Crop to the mark",
		.wish = "keep only what is marked", .writes = true, .run = act_crop_to_mark },
};
const struct act_group acts_of_size = ACT_GROUP(acts);
