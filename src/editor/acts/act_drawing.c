#include "base/path.h"
#include "editor/acts/act_groups.h"
#include "editor/acts/deliver.h"
#include "editor/acts/shared.h"
#include "editor/cards/card_ask.h"
#include "report/svg/svg.h"
#include "takeoff/sun/sun_hours.h"

#include <stdlib.h>

enum { FILE_NAME, PAPER, TURN, SCALE, PLAIN, LEVELS, STRINGS, SUN, SHEET, DRAWING_FIELDS };

static const struct value_rule paper_rule = { .kind = VALUE_CHOICE, .words = paper_words };
static const struct value_rule turn_rule = { .kind = VALUE_CHOICE, .words = paper_turn_words };
static const struct value_rule scale_rule = { .kind = VALUE_TEXT, .least = 1, .most = 20 };
static const struct value_rule sheet_rule = { .kind = VALUE_COUNT, .least = 1, .most = 9999 };

static const struct field_spec fields[DRAWING_FIELDS] = {
	[PAPER] = { .label = "Paper", .meaning = "The size of the sheet.", .rule = &paper_rule,
		.unset = "A4 or letter" },
	[TURN] = { .label = "Turned", .meaning = "Upright or lying.", .rule = &turn_rule,
		.unset = "as it is larger" },
	[SCALE] = { .label = "Scale", .rule = &scale_rule, .unset = "the largest that fits" },
	[PLAIN] = { .label = "Black on white", .meaning = "For a printer without colours.",
		.unset = "no" },
	[LEVELS] = { .label = "With levels", .meaning = "The drops that were measured.",
		.unset = "no" },
	[STRINGS] = { .label = "With strings",
		.meaning = "Strings and points of the set-out instead of sides of beds.",
		.unset = "no" },
	[SUN] = { .label = "With the sun", .meaning = "Hours of sun instead of kinds of ground.",
		.unset = "no" },
	[SHEET] = { .label = "Sheet", .meaning = "Sections of walls go on behind the first.",
		.rule = &sheet_rule, .unset = "1" },
};

/* The owner of the card. */
struct drawing {
	struct editor *editor;
	struct svg_asked asked;
};

static void print(struct sink *out, const void *context)
{
	const struct drawing *drawing = context;
	const struct editor *editor = drawing->editor;

	report_svg(out, editor->plot, &editor->takeoff, editor->name, &drawing->asked);
}

/* What a field that is a choice or a number says; `unset` where it says nothing. */
static bool number_read(const struct card *card, int field, int unset, int *out,
	struct fault *fault)
{
	struct value value;

	if (!card_read(card, field, &value, fault))
		return false;
	*out = value.set ? (int)value.as.number : unset;
	return true;
}

/* What a scale looks like. */
static const char *scale_meaning(enum units units)
{
	return units == UNITS_METRIC ? "Such as 1:50." :
		"Such as 1:48, or what an inch is on the ground: 4 ft.";
}

static bool scale_field_read(const struct card *card, int *scale, struct fault *fault)
{
	struct value typed;
	bool is_good;

	if (!card_read(card, SCALE, &typed, fault))
		return false;
	is_good = !typed.set || scale_read(typed.as.text, scale);
	value_fini(VALUE_TEXT, &typed);
	return is_good || fault_set(fault, SCALE, "Scale: not understood. %s",
		scale_meaning(card->units));
}

static bool asked_read(const struct card *card, struct svg_asked *asked, struct fault *fault)
{
	int is_plain, has_levels, has_strings, has_sun;

	*asked = SVG_AS_FITS;
	if (!number_read(card, PAPER, AS_FITS, &asked->paper, fault) ||
	    !number_read(card, TURN, AS_FITS, &asked->turn, fault) ||
	    !scale_field_read(card, &asked->scale, fault) ||
	    !number_read(card, PLAIN, CHOICE_NO, &is_plain, fault) ||
	    !number_read(card, LEVELS, CHOICE_NO, &has_levels, fault) ||
	    !number_read(card, STRINGS, CHOICE_NO, &has_strings, fault) ||
	    !number_read(card, SUN, CHOICE_NO, &has_sun, fault) ||
	    !number_read(card, SHEET, 1, &asked->sheet, fault))
		return false;
	asked->is_plain = is_plain == CHOICE_YES;
	asked->with = (has_levels == CHOICE_YES ? (unsigned)DRAW_LEVELS : 0u) |
		(has_strings == CHOICE_YES ? (unsigned)DRAW_STRINGS : 0u) |
		(has_sun == CHOICE_YES ? (unsigned)DRAW_SUN : 0u);
	return true;
}

/* False where the sheet cannot be made as asked. */
static bool is_drawable(const struct drawing *drawing, struct fault *fault)
{
	const struct editor *editor = drawing->editor;
	struct text why = TEXT_EMPTY;
	bool has_sun = !(drawing->asked.with & DRAW_SUN) || sun_has_site(&editor->takeoff);
	bool is_good = svg_fits(editor->plot, &editor->takeoff, &drawing->asked, &why) ||
		fault_set(fault, has_sun ? SCALE : SUN, "Not so: %s.", why.bytes);

	text_fini(&why);
	return is_good;
}

static bool drawing_write(const struct drawing *drawing, const char *path, struct fault *fault)
{
	struct editor *editor = drawing->editor;
	int sheets;

	if (!act_count(editor))
		return fault_set(fault, FILE_NAME, "Given up: nothing is written.");
	if (!is_drawable(drawing, fault) ||
	    !act_deliver(editor, "Counting and writing the drawing", path,
		&(struct file_content){ print, drawing }, fault))
		return false;
	sheets = svg_sheets(editor->plot, &editor->takeoff, &drawing->asked);
	editor_say(editor, "Drawing written to %s: sheet %d of %d.", path, drawing->asked.sheet,
		sheets);
	return true;
}

static bool drawing_accept(struct card *card, struct fault *fault)
{
	struct drawing *drawing = card->owner;
	char *path;
	bool done;

	if (!asked_read(card, &drawing->asked, fault) ||
	    !card_file_read(card, FILE_NAME, &path, fault))
		return false;
	done = drawing_write(drawing, path, fault);
	free(path);
	return done;
}

static void act_drawing(struct editor *editor)
{
	struct drawing drawing = { .editor = editor };
	struct field_spec specs[DRAWING_FIELDS];
	const char *plot = editor->store.path;

	for (int i = 0; i < DRAWING_FIELDS; i++) {
		specs[i] = fields[i];
		if (!specs[i].rule)
			specs[i].rule = &attribute_row(BED_REPLACE)->rule; /* no or yes */
	}
	specs[SCALE].meaning = scale_meaning(plot_units(editor->plot));
	specs[FILE_NAME] = card_file(arena_print(&editor->words, "%.*s.svg",
		(int)path_stem(plot, ".plot"), plot));
	card_ask(editor, &(struct card_spec){ .title = "Write the plan to scale to a file",
		.done = "write it", .fields = specs, .count = DRAWING_FIELDS,
		.accept = drawing_accept, .owner = &drawing });
}

static const struct act acts[] = {
	{ .id = ACT_DRAWING, .key_name = ">", .name = "Drawing",
		.wish = "draw the plan to scale",
		.words = "svg picture image paper scale section graphic",
		.run = act_drawing },
};
const struct act_group acts_of_drawing = ACT_GROUP("File", acts);
