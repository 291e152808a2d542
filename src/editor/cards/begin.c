#include "editor/cards/begin.h"
#include "base/memory.h"
#include "editor/cards/card_ask.h"

#include <string.h>

enum { TITLE, UNITS, WIDTH, DEPTH, CELL, BEGIN_FIELDS };

static const struct value_rule side = { .kind = VALUE_LENGTH, .least = NM_PER_INCH,
	.most = LENGTH_MOST };

static const char *const answers[][BEGIN_FIELDS] = {
	[UNITS_IMPERIAL] = { "", "imperial", "24 ft", "20 ft", "1 ft" },
	[UNITS_METRIC] = { "", "metric", "7.2 m", "6 m", "300 mm" },
};

/* The legend of a new plot; all else stays unset. */
static const struct {
	enum plot_class class;
	char letter;
	const char *name;
} legend[] = {
	{ CLASS_BED, 'b', "Raised bed" },
	{ CLASS_PATH, 'p', "Crushed stone" },
	{ CLASS_LAWN, 'l', "Turf" },
	{ CLASS_FIXTURE, 'S', "Sundial" },
};

/* What the form says of a plot, read. */
struct wanted {
	char *title; /* owned, NULL: none */
	enum units units;
	nm cell;
	int columns, rows;
};

/* Takes over the title. */
static void plot_begin(struct plot *plot, const struct wanted *wanted)
{
	struct details *details = &plot->details;

	plot_init(plot);
	if (wanted->title)
		block_set(&details->head, HEAD_TITLE,
			(struct value){ .set = true, .as.text = wanted->title });
	block_set(&details->head, HEAD_UNITS,
		(struct value){ .set = true, .as.number = wanted->units });
	block_set(&details->head, HEAD_CELL,
		(struct value){ .set = true, .as.length = wanted->cell });
	for (size_t i = 0; i < sizeof legend / sizeof *legend; i++)
		details_add_entry(details, legend[i].class, legend[i].letter,
			memory_string(legend[i].name));
	ground_init(&plot->ground, wanted->columns, wanted->rows);
}

void begin_preview(struct plot *plot)
{
	plot_begin(plot, &(struct wanted){ .units = UNITS_IMPERIAL, .cell = NM_PER_FOOT,
		.columns = 24, .rows = 20 });
}

static bool too_many(const struct card *card, int field, nm length, nm cell, struct fault *fault)
{
	struct text most = TEXT_EMPTY;

	length_write(&most, SIDE_MOST * cell, card->units);
	fault_set(fault, field, "%s: %lld cells, expected at most %d, which are %s; larger cells "
		"reach farther", card->fields[field].label, (long long)(length / cell), SIDE_MOST,
		most.bytes);
	text_fini(&most);
	return false;
}

/* How many cells a side has. */
static bool cells_read(const struct card *card, int field, nm cell, int *cells,
	struct fault *fault)
{
	const struct editor *editor = card->owner;
	const char *label = card->fields[field].label;
	struct arena words = ARENA_EMPTY;
	struct report report = editor_report(editor, &words);
	struct value length;
	nm below;

	if (!card_read(card, field, &length, fault))
		return false;
	report.units = card->units; /* not yet the editor's */
	below = length.as.length / cell * cell;
	*cells = (int)(below / cell);
	if (length.as.length != below)
		fault_set(fault, field,
			"%s: %s is no whole number of cells of %s, but %s%s%s is", label,
			exact_length(&report, length.as.length), exact_length(&report, cell),
			below ? exact_length(&report, below) : "", below ? " is, and " : "",
			exact_length(&report, below + cell));
	arena_clear(&words);
	return length.as.length == below;
}

/* A side of more cells than a plan may have, as the cell's side is typed so far. */
static bool begin_check(const struct card *card, int field, const struct value *value,
	struct fault *fault)
{
	struct fault none = { .words = TEXT_EMPTY };
	struct value cell;
	bool is_good = (field != WIDTH && field != DEPTH) ||
		!card_read(card, CELL, &cell, &none) ||
		value->as.length / cell.as.length <= SIDE_MOST ||
		too_many(card, field, value->as.length, cell.as.length, fault);

	fault_fini(&none);
	return is_good;
}

static bool wanted_read(struct card *card, struct wanted *wanted, struct fault *fault)
{
	struct value units, cell, title;

	if (!card_read(card, UNITS, &units, fault))
		return false;
	wanted->units = card->units = units.as.number == UNITS_METRIC ? UNITS_METRIC :
		UNITS_IMPERIAL;
	if (!card_read(card, CELL, &cell, fault))
		return false;
	wanted->cell = cell.as.length;
	if (!cells_read(card, WIDTH, wanted->cell, &wanted->columns, fault) ||
		!cells_read(card, DEPTH, wanted->cell, &wanted->rows, fault) ||
		!card_read(card, TITLE, &title, fault))
		return false;
	wanted->title = title.set ? memory_string(title.as.text) : NULL;
	value_fini(VALUE_TEXT, &title);
	return true;
}

static bool begin_accept(struct card *card, struct fault *fault)
{
	struct editor *editor = card->owner;
	struct wanted wanted;
	struct plot plot;

	if (!wanted_read(card, &wanted, fault))
		return false;
	plot_begin(&plot, &wanted);
	editor_take(editor, &plot, false);
	editor->has_begun = true;
	return true;
}

/* With other units, answers nobody has touched become the ones that are round in them. */
static void begin_changed(struct card *card, int field)
{
	bool is_metric = strcmp(card->fields[UNITS].typed, answers[UNITS_METRIC][UNITS]) == 0;
	enum units to = is_metric ? UNITS_METRIC : UNITS_IMPERIAL;
	enum units from = is_metric ? UNITS_IMPERIAL : UNITS_METRIC;

	if (field != UNITS)
		return;
	card->units = to;
	for (int i = WIDTH; i < BEGIN_FIELDS; i++)
		if (strcmp(card->fields[i].typed, answers[from][i]) == 0)
			card_type(card, i, answers[to][i]);
}

bool begin_ask(struct editor *editor)
{
	static const char *const labels[BEGIN_FIELDS] = { "Title", "Units", "Width, left to right",
		"Depth, top to bottom", "Side of a cell" };
	const char *const meanings[BEGIN_FIELDS] = { attribute_row(HEAD_TITLE)->meaning,
		attribute_row(HEAD_UNITS)->meaning, "How wide the whole plan is.",
		"How deep the whole plan is, down the screen.", attribute_row(HEAD_CELL)->meaning };
	const struct value_rule *const rules[BEGIN_FIELDS] = { &attribute_row(HEAD_TITLE)->rule,
		&attribute_row(HEAD_UNITS)->rule, &side, &side, &attribute_row(HEAD_CELL)->rule };
	struct field_spec fields[BEGIN_FIELDS];

	for (int i = 0; i < BEGIN_FIELDS; i++)
		fields[i] = (struct field_spec){ .label = labels[i], .meaning = meanings[i],
			.rule = rules[i], .required = i != TITLE,
			.span = i == WIDTH || i == DEPTH ? SPAN_PLAN : SPAN_SMALL,
			.typed = answers[UNITS_IMPERIAL][i] };
	return card_ask(editor, &(struct card_spec){ .title = "Begin a new plot",
		.done = "begin the plot", .fields = fields, .count = BEGIN_FIELDS,
		.accept = begin_accept, .check = begin_check,
		.changed = begin_changed, .owner = editor });
}
