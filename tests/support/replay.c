#include "support/fuzz.h"
#include "support/random.h"

#include <errno.h>
#include <glob.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

/* Copies of each seed, in `make check` and with full counts. */
enum { FEW_COPIES = 100, MANY_COPIES = 300, MOST_DAMAGE = 8 };

struct seed {
	uint8_t *bytes;
	size_t size;
};

static struct seed seed_read(const char *path)
{
	FILE *file = fopen(path, "rb");
	char *bytes = NULL;
	size_t capacity = 0;
	FILE *memory = open_memstream(&bytes, &capacity);

	if (!file || !memory) {
		fprintf(stderr, "%s: %s\n", path, strerror(errno));
		exit(EXIT_FAILURE);
	}
	for (int c; (c = getc(file)) != EOF;)
		putc(c, memory);
	fclose(file);
	fclose(memory);
	return (struct seed) { (uint8_t *)bytes, capacity };
}

/* In memory of exactly the size, so that reading past it is seen by a sanitizer. */
static void seed_try(struct seed seed)
{
	uint8_t *exact = malloc(seed.size ? seed.size : 1);

	if (seed.size)
		memcpy(exact, seed.bytes, seed.size);
	LLVMFuzzerTestOneInput(exact, seed.size);
	free(exact);
}

/* Bytes changed, or moved from elsewhere in the seed, or the end cut off. */
static void seed_damage(struct seed *seed, struct random *r)
{
	int limit = (int)seed->size;

	for (int n = random_between(r, 1, MOST_DAMAGE); n > 0; n--) {
		uint8_t *at = seed->bytes + random_below(r, limit);
		switch (random_below(r, 3)) {
		case 0:
			*at = (uint8_t)random_below(r, 256);
			break;
		case 1:
			*at = seed->bytes[random_below(r, limit)];
			break;
		case 2:
			*at = (uint8_t)(*at + random_between(r, -1, 1));
			break;
		}
	}
	if (random_below(r, 4) == 0)
		seed->size = (size_t)random_below(r, limit);
}

static void replay(const char *path, struct random *r)
{
	struct seed seed = seed_read(path);
	int copies = getenv("FULL") ? MANY_COPIES : FEW_COPIES;

	printf("%s\n", path);
	fflush(stdout);
	seed_try(seed);
	for (int i = 0; i < copies && seed.size > 0; i++) {
		struct seed copy = seed_read(path);
		seed_damage(&copy, r);
		seed_try(copy);
		free(copy.bytes);
	}
	free(seed.bytes);
}

/* Without arguments: the seeds that belong to this program's name, each a check in the sum. */
int main(int argc, char **argv)
{
	struct random r = { 1 };
	char seeds[256];
	glob_t found = { 0 };

	snprintf(seeds, sizeof seeds, "tests/fuzz/%s/*", basename(argv[0]));
	glob(seeds, 0, NULL, &found);
	glob("plots/*.plot", GLOB_APPEND, NULL, &found);
	size_t count = argc > 1 ? (size_t)argc - 1 : found.gl_pathc;
	for (size_t i = 0; i < count; i++)
		replay(argc > 1 ? argv[i + 1] : found.gl_pathv[i], &r);
	globfree(&found);
	printf("100%%: Checks: %zu, Failures: 0, Errors: 0\n", count);
	return count > 0 ? EXIT_SUCCESS : EXIT_FAILURE;
}
