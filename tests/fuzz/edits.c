/* Any bytes, taken as acts on a plot: a plot that was right stays so, taking all acts back gives
 * its first bytes, putting them back its last, and saving in between changes nothing. */

#include "support/fuzz.h"
#include "support/plot_check.h"

#include "base/memory.h"
#include "plot/edit/fence_lay.h"
#include "plot/format/format.h"
#include "plot/history/history.h"
#include "plot/edit/lay.h"
#include "plot/edit/legend.h"
#include "plot/edit/names.h"
#include "plot/edit/patch.h"
#include "plot/edit/plants_lay.h"
#include "plot/edit/plants_move.h"
#include "plot/edit/resize.h"
#include "plot/edit/strip.h"

#include <assert.h>
#include <stdlib.h>
#include <string.h>

/* Numbers out of the bytes; 0 for ever behind their end. */
struct source {
	const uint8_t *bytes;
	size_t left;
};

static int next(struct source *source)
{
	if (source->left == 0)
		return 0;
	source->left--;
	return *source->bytes++;
}

static int below(struct source *source, int limit)
{
	return next(source) % limit;
}

static char *written(const struct plot *plot)
{
	struct text text = TEXT_EMPTY;

	format_write(plot, &text);
	return text_take(&text);
}

static void check_written(const struct plot *plot, const char *expected)
{
	char *bytes = written(plot);

	assert(strcmp(bytes, expected) == 0);
	free(bytes);
}

static void check_read(const struct plot *plot)
{
	char *bytes = written(plot);
	struct plot again;
	struct diag d;

	plot_init(&again);
	bool is_read = format_read(bytes, strlen(bytes), &again, &d);
	assert(is_read && plot_equal(plot, &again));
	(void)is_read;
	plot_fini(&again);
	free(bytes);
}

static void plot_start(struct plot *plot, struct source *source)
{
	static const char head[] = "parterre-plot 1\nunits imperial\ncell 1 ft\n"
		"bed b \"Bed\"\n  courses 4\npath p \"Path\"\nlawn l \"Lawn\"\nfixture S "
		"\"Sundial\"\n"
		"ground 1 x 1\n  .\nservice water \"Supply\" existing\n  line 0,0 1,0 1,1\n"
		"plant r \"Rose\"\n  at 0,0\n  drift b front\n"
		"levels 1 ft\n  0 in, 1 in\n  2 in, 3 in\nfinish 1,1 1 in\nhouse \"House\"\n"
		"  from -3,-2 to 1,0\ntie 0,0 \"Corner\" 1 ft\nkeep \"Pear\" 1 ft\n  at 1,1\n"
		"keep \"Wall\"\n  from 0,0 to 1,1\ndrop 0,1\ntap 1,0\n";
	struct diag d;

	plot_init(plot);
	bool is_read = format_read(head, sizeof head - 1, plot, &d);
	assert(is_read);
	(void)is_read;
	resize_plot(plot, &(struct margins){ .right = below(source, 24),
		.bottom = below(source, 24) });
}

static char letter_chosen(const struct plot *plot, struct source *source)
{
	int entry = below(source, (int)plot->details.legend_count + 1) - 1;

	return entry < 0 ? OPEN_GROUND : plot->details.legend[entry].letter;
}

static void act_on_ground(struct plot *plot, struct source *source, int how)
{
	struct ground *ground = &plot->ground;
	char letter = letter_chosen(plot, source);
	int x = below(source, ground->columns), y = below(source, ground->rows);
	struct rectangle r = rectangle_between(x, y, below(source, ground->columns),
		below(source, ground->rows));
	struct mirror mirror = mirror_of(plot);
	struct patch patch;

	switch (how) {
	case 0:
		lay_rectangle(plot, r, letter);
		break;
	case 1:
		lay_frame(plot, r, 1 + below(source, 3), letter);
		break;
	case 2:
		lay_flood(plot, x, y, letter);
		break;
	case 3:
		if (mirror_has_side(&mirror, x, y))
			lay_fold(plot, x, y);
		break;
	default:
		patch = patch_of(plot, r);
		if (next(source) % 2)
			patch_turn(&patch);
		patch_flip(&patch, next(source) % 2);
		patch_stamp(plot, &patch, next(source) - 128, next(source) - 128);
		patch_fini(&patch);
		break;
	}
}

static void act_on_legend(struct plot *plot, struct source *source, int how)
{
	struct details *details = &plot->details;
	enum plot_class class = (enum plot_class)below(source, CLASS_FIXTURE + 1);
	char free_letter = legend_free_letter(details, class), letter = letter_chosen(plot, source),
		to = letter_chosen(plot, source);

	if (how == 0 && free_letter)
		details_add_entry(details, class, free_letter, memory_string("New"));
	else if (how == 1 && letter != OPEN_GROUND && free_letter &&
		class_takes_letter(plot_class_of(plot, letter), free_letter))
		legend_reletter(plot, letter, free_letter);
	else if (how == 2 && letter != OPEN_GROUND && letter != to)
		legend_remove(plot, letter, to);
}

static void act_on_head(struct plot *plot, struct source *source, int how)
{
	struct block *head = &plot->details.head;
	struct margins m = { below(source, 9) - 4, below(source, 9) - 4, below(source, 9) - 4,
		below(source, 9) - 4 };
	struct value value = { .set = next(source) % 4 != 0 };

	if (how == 0 && resize_fits(&plot->ground, &m)) {
		resize_plot(plot, &m);
	} else if (how == 1) {
		value.as.number = below(source, MIRROR_HALF_TURN + 1);
		block_set(head, HEAD_MIRROR, value);
	} else if (how == 2) {
		value.as.place = (struct place){ 1 + below(source, 2 * plot->ground.columns - 1),
			1 + below(source, 2 * plot->ground.rows - 1) };
		block_set(head, HEAD_AXIS, value);
	} else if (how == 3) {
		notes_add(&head->notes, memory_string("A note"));
	}
}

static void act_on_fence(struct plot *plot, struct source *source, int how)
{
	struct details *details = &plot->details;
	struct mirror mirror = mirror_of(plot);
	const struct ground *ground = &plot->ground;
	struct place from = { below(source, ground->columns + 1), below(source, ground->rows + 1) };
	struct leg leg = { from, from };
	struct fence *fence;

	if (details->fence_count == 0 || how == 0)
		details_add_fence(details, memory_string("Fence"));
	fence = &details->fences[below(source, (int)details->fence_count)];
	if (next(source) % 2)
		leg.to.x = below(source, ground->columns + 1);
	else
		leg.to.y = below(source, ground->rows + 1);
	if (how == 1 && mirror_has_side(&mirror, 0, 0))
		fence_fold(plot, fence, (struct place){ 0, 0 });
	if (!leg_is_straight(leg))
		return;
	if (how == 2)
		fence_take_out(plot, fence, leg);
	else if (how == 3)
		fence_set_gate(plot, fence, leg);
	else if (how == 4)
		fence_take_out_gate(plot, fence, leg);
	else
		fence_lay(plot, fence, leg);
}

static void act_on_strips(struct plot *plot, struct source *source)
{
	struct mirror mirror = mirror_of(plot);
	struct strip strip = { .is_level = next(source) % 2, .is_out = next(source) % 2,
		.count = 1 + below(source, 4) };

	strip.is_on_axis = mirror_has_axis(&mirror, strip.is_level) && next(source) % 2;
	strip.cell = below(source, strip.is_level ? plot->ground.rows : plot->ground.columns);
	if (strip_check(plot, &strip) == STRIP_FITS && strip_side(plot, &strip) < 200)
		strip_do(plot, &strip);
}

static void act_on_names(struct plot *plot, struct source *source)
{
	struct place at = { below(source, plot->ground.columns), below(source, plot->ground.rows) };

	names_set(plot, at, next(source) % 4 ? "Name" : "");
}

/* The plant r, which no entry's letter may be. */
static void act_on_plants(struct plot *plot, struct source *source)
{
	struct place at = { below(source, plot->ground.columns), below(source, plot->ground.rows) };
	bool is_bed = plot_class_of(plot, ground_cell(&plot->ground, at.x, at.y)) == CLASS_BED;
	struct mirror mirror = mirror_of(plot);
	const struct plant *plant = plants_find(&plot->details.plants, 'r');
	int how = below(source, 6);

	if (how == 0)
		plants_lift(plot, at);
	else if (how == 1 && is_bed)
		plants_fill(plot, 'r', at, (enum band)below(source, BANDS), next(source) % 2);
	else if (how == 2 && plant->drift_count)
		plants_empty(plot, 'r', plant->drifts[below(source, (int)plant->drift_count)]);
	else if (how == 3 && mirror_has_side(&mirror, at.x, at.y))
		plants_fold(plot, at);
	else
		plants_set(plot, 'r', at);
}

static void act(struct plot *plot, struct source *source)
{
	int how = below(source, 25);

	if (how < 5)
		act_on_ground(plot, source, how);
	else if (how < 8)
		act_on_legend(plot, source, how - 5);
	else if (how < 12)
		act_on_head(plot, source, how - 8);
	else if (how < 20)
		act_on_fence(plot, source, how - 12);
	else if (how == 20)
		act_on_strips(plot, source);
	else if (how == 21)
		act_on_names(plot, source);
	else
		act_on_plants(plot, source);
}

int LLVMFuzzerTestOneInput(const uint8_t *bytes, size_t size)
{
	struct source source = { bytes, size };
	struct plot plot;
	struct place at;

	plot_start(&plot, &source);
	char *first = written(&plot);
	struct history *history = history_new(&plot);
	while (source.left > 0) {
		int what = below(&source, 8);

		if (what == 0)
			history_undo(history, &plot, &at);
		else if (what == 1)
			history_redo(history, &plot, &at);
		else
			act(&plot, &source);
		if (what > 1)
			history_record(history, &plot, "");
		plot_check(&plot);
	}
	while (history_redo(history, &plot, &at))
		continue;
	check_read(&plot);
	char *last = written(&plot);
	while (history_undo(history, &plot, &at))
		plot_check(&plot);
	check_written(&plot, first);
	while (history_redo(history, &plot, &at))
		continue;
	check_written(&plot, last);
	history_free(history);
	plot_fini(&plot);
	free(first);
	free(last);
	return 0;
}
