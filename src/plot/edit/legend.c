#include "plot/edit/legend.h"

#include <assert.h>
#include <stdlib.h>
#include <string.h>

int legend_index(const struct details *details, char letter)
{
	for (size_t i = 0; i < details->legend_count; i++)
		if (details->legend[i].letter == letter)
			return (int)i;
	return -1;
}

bool legend_is_free(const struct details *details, char letter)
{
	return legend_index(details, letter) < 0 && !plants_find(&details->plants, letter);
}

char legend_free_letter(const struct details *details, enum plot_class class)
{
	char first = class == CLASS_FIXTURE ? 'A' : 'a';

	for (int i = 0; i < 26; i++)
		if (legend_is_free(details, (char)(first + i)))
			return (char)(first + i);
	return '\0';
}

int64_t legend_cells(const struct plot *plot, char letter)
{
	int64_t count = 0;

	for (size_t i = 0; i < ground_count(&plot->ground); i++)
		count += plot->ground.cells[i] == letter;
	return count;
}

static void rewrite(struct ground *ground, char letter, char to)
{
	for (size_t i = 0; i < ground_count(ground); i++)
		if (ground->cells[i] == letter)
			ground->cells[i] = to;
}

/* Of all beds of the letter; to: another letter, or NUL, with which they go. */
static void drifts_reletter(struct plants *plants, char letter, char to)
{
	for (size_t i = 0; i < plants->count; i++) {
		struct plant *plant = &plants->items[i];

		for (size_t j = plant->drift_count; j-- > 0;) {
			if (plant->drifts[j].letter != letter)
				continue;
			if (to)
				plant->drifts[j].letter = to;
			else
				plant_remove_drift(plant, j);
		}
	}
}

void legend_reletter(struct plot *plot, char letter, char to)
{
	int index = legend_index(&plot->details, letter);

	assert(index >= 0 && legend_is_free(&plot->details, to));
	assert(class_takes_letter(plot->details.legend[index].class, to));
	plot->details.legend[index].letter = to;
	drifts_reletter(&plot->details.plants, letter, to);
	rewrite(&plot->ground, letter, to);
}

void legend_remove(struct plot *plot, char letter, char to)
{
	struct details *details = &plot->details;
	int index = legend_index(details, letter);
	struct entry *entry = &details->legend[index];

	assert(index >= 0 && to != letter);
	assert(to == OPEN_GROUND || legend_index(details, to) >= 0);
	free(entry->name);
	block_fini(&entry->block);
	details->legend_count--;
	memmove(entry, entry + 1, (details->legend_count - (size_t)index) * sizeof *entry);
	drifts_reletter(&details->plants, letter, '\0');
	rewrite(&plot->ground, letter, to);
}
