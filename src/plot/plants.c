#include "plot/plants.h"
#include "base/memory.h"
#include "plot/leg.h"

#include <stdlib.h>
#include <string.h>

const char *const band_words[] = { "whole", "front", "middle", "back", NULL };

static void plant_fini(struct plant *plant)
{
	free(plant->name);
	block_fini(&plant->block);
	free(plant->specimens);
	free(plant->drifts);
}

void plants_fini(struct plants *plants)
{
	for (size_t i = 0; i < plants->count; i++)
		plant_fini(&plants->items[i]);
	free(plants->items);
	*plants = PLANTS_NONE;
}

struct plants plants_copy(const struct plants *plants)
{
	struct plants copy = PLANTS_NONE;

	for (size_t i = 0; i < plants->count; i++) {
		const struct plant *from = &plants->items[i];
		struct plant *to = plants_add(&copy, from->letter, memory_string(from->name));

		to->block = block_copy(&from->block);
		for (size_t j = 0; j < from->specimen_count; j++)
			plant_add_specimen(to, from->specimens[j]);
		for (size_t j = 0; j < from->drift_count; j++)
			plant_add_drift(to, from->drifts[j]);
	}
	return copy;
}

bool drift_equal(const struct drift *a, const struct drift *b)
{
	return a->letter == b->letter && place_equal(a->at, b->at) && a->band == b->band;
}

static bool plant_equal(const struct plant *a, const struct plant *b)
{
	if (a->letter != b->letter || strcmp(a->name, b->name) != 0 ||
		!block_equal(&a->block, &b->block) || a->specimen_count != b->specimen_count ||
		a->drift_count != b->drift_count)
		return false;
	for (size_t i = 0; i < a->specimen_count; i++)
		if (!place_equal(a->specimens[i], b->specimens[i]))
			return false;
	for (size_t i = 0; i < a->drift_count; i++)
		if (!drift_equal(&a->drifts[i], &b->drifts[i]))
			return false;
	return true;
}

bool plants_equal(const struct plants *a, const struct plants *b)
{
	bool is_equal = a->count == b->count;

	for (size_t i = 0; is_equal && i < a->count; i++)
		is_equal = plant_equal(&a->items[i], &b->items[i]);
	return is_equal;
}

struct plant *plants_add(struct plants *plants, char letter, char *name)
{
	struct plant *plant;

	plants->items = memory_grow(plants->items, plants->count, &plants->capacity,
		sizeof *plants->items);
	plant = &plants->items[plants->count++];
	*plant = (struct plant){ .letter = letter, .name = name, .block.kind = BLOCK_PLANT };
	return plant;
}

void plants_remove(struct plants *plants, size_t index)
{
	struct plant *plant = &plants->items[index];

	plant_fini(plant);
	memmove(plant, plant + 1, (--plants->count - index) * sizeof *plant);
}

bool plant_takes_letter(char letter)
{
	return letter >= 'a' && letter <= 'z';
}

struct plant *plants_find(const struct plants *plants, char letter)
{
	for (size_t i = 0; i < plants->count; i++)
		if (plants->items[i].letter == letter)
			return &plants->items[i];
	return NULL;
}

nm plant_spacing(const struct plant *plant, enum units units)
{
	const struct value *spacing = block_value(&plant->block, PLANT_SPACING);

	return spacing->set ? spacing->as.length :
		attribute_preset(PLANT_SPACING, units)->as.length;
}

nm plant_spread(const struct plant *plant, enum units units)
{
	const struct value *spread = block_value(&plant->block, PLANT_SPREAD);

	return spread->set ? spread->as.length : plant_spacing(plant, units);
}

size_t plant_specimen(const struct plant *plant, struct place at)
{
	size_t i = 0;

	while (i < plant->specimen_count && !place_equal(plant->specimens[i], at))
		i++;
	return i;
}

void plant_add_specimen(struct plant *plant, struct place at)
{
	plant->specimens = memory_grow(plant->specimens, plant->specimen_count,
		&plant->specimen_capacity, sizeof *plant->specimens);
	plant->specimens[plant->specimen_count++] = at;
}

void plant_remove_specimen(struct plant *plant, size_t index)
{
	struct place *place = &plant->specimens[index];

	memmove(place, place + 1, (--plant->specimen_count - index) * sizeof *place);
}

void plant_add_drift(struct plant *plant, struct drift drift)
{
	plant->drifts = memory_grow(plant->drifts, plant->drift_count, &plant->drift_capacity,
		sizeof *plant->drifts);
	plant->drifts[plant->drift_count++] = drift;
}

void plant_remove_drift(struct plant *plant, size_t index)
{
	struct drift *drift = &plant->drifts[index];

	memmove(drift, drift + 1, (--plant->drift_count - index) * sizeof *drift);
}
