#include "plot/format/read_plant.h"
#include "plot/format/read_block.h"

bool read_plant(struct later_reader *r, struct scan *s, struct diag *d)
{
	struct plants *plants = &r->plot->details.plants;
	size_t start = s->at, length;
	const char *word = scan_word(s, &length);
	char *name;

	if (length != 1 || !plant_takes_letter(word[0]))
		return scan_fail(s, start, d, "a lower-case letter");
	if (plot_entry(r->plot, word[0]))
		return scan_fail(s, start, d, "another letter: %c is in the legend already",
			word[0]);
	if (plants_find(plants, word[0]))
		return scan_fail(s, start, d, "another letter: %c is a plant already", word[0]);
	if (!scan_quoted(s, 1, NAME_MOST, &name, d))
		return false;
	r->plant = plants_add(plants, word[0], name);
	cell_set_fini(&r->taken);
	r->taken = cell_set_of(&r->plot->ground);
	return scan_end(s, d);
}

static bool read_specimen(struct later_reader *r, struct scan *s, struct diag *d)
{
	struct scan start;
	struct place at;

	scan_blanks(s);
	start = *s;
	if (!read_cell(&r->plot->ground, s, &at, d))
		return false;
	if (!cell_set_add(&r->taken, at))
		return fail_point(&start, d, "another cell: this plant stands there already");
	plant_add_specimen(r->plant, at);
	return scan_end(s, d);
}

/* The letter of a bed, or a cell. */
static bool read_drift_place(struct later_reader *r, struct scan *s, struct drift *drift,
	struct diag *d)
{
	size_t start = s->at, length;
	const char *word;

	scan_blanks(s);
	if (char_is_digit(scan_peek(s)))
		return read_cell(&r->plot->ground, s, &drift->at, d);
	word = scan_word(s, &length);
	if (length != 1 || plot_class_of(r->plot, word[0]) != CLASS_BED)
		return scan_fail(s, start, d, "the letter of a bed in the legend, or a cell X,Y");
	drift->letter = word[0];
	return true;
}

static bool read_drift(struct later_reader *r, struct scan *s, struct diag *d)
{
	static const struct value_rule band_rule = { .kind = VALUE_CHOICE, .words = band_words };
	struct drift drift = { .letter = 0 };
	struct value band;

	if (!read_drift_place(r, s, &drift, d) ||
		!value_scan(s, &band_rule, plot_units(r->plot), &band, d))
		return false;
	drift.band = (enum band)band.as.number;
	plant_add_drift(r->plant, drift);
	return scan_end(s, d);
}

bool read_plant_line(struct later_reader *r, struct scan *s, struct diag *d)
{
	struct scan ahead = *s;
	size_t length;
	const char *word = scan_word(&ahead, &length);

	if (scan_word_is(word, length, "at"))
		return read_specimen(r, &ahead, d);
	if (scan_word_is(word, length, "drift"))
		return read_drift(r, &ahead, d);
	return read_block_line(&r->plant->block, s, plot_units(r->plot), d);
}
