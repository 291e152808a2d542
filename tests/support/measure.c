#include "support/measure.h"

#include <malloc.h>
#include <stdlib.h>
#include <sys/resource.h>
#include <sys/wait.h>
#include <time.h>
#include <unistd.h>

#ifdef __has_feature
#define HAS_FEATURE(name) __has_feature(name)
#else
#define HAS_FEATURE(name) 0
#endif

#if defined(__SANITIZE_ADDRESS__) || HAS_FEATURE(address_sanitizer)
enum { IS_SANITIZED = true };
#else
enum { IS_SANITIZED = false };
#endif

static void draw(const struct shape *shape, int size, const char *path)
{
	int status = -1;
	pid_t child = fork();

	if (child == 0) {
		shape_write(shape, size, path);
		_exit(0);
	}
	if (child < 0 || waitpid(child, &status, 0) != child || status != 0)
		abort();
}

static pid_t start(const char *path, bool is_json, int *output)
{
	int ends[2];
	pid_t child;

	if (pipe(ends) != 0)
		abort();
	child = fork();
	if (child == 0) {
		dup2(ends[1], STDOUT_FILENO);
		close(ends[0]);
		close(ends[1]);
		execl(BUILD_FOLDER "/parterre", "parterre", "takeoff", path,
			is_json ? "--json" : (char *)NULL, (char *)NULL);
		_exit(127);
	}
	close(ends[1]);
	*output = ends[0];
	return child;
}

static size_t count_all(int output)
{
	static char bytes[64 * 1024];
	size_t count = 0;
	ssize_t length;

	while ((length = read(output, bytes, sizeof bytes)) > 0)
		count += (size_t)length;
	close(output);
	return count;
}

static double now(void)
{
	struct timespec t;

	clock_gettime(CLOCK_MONOTONIC, &t);
	return (double)t.tv_sec + (double)t.tv_nsec / 1e9;
}

struct measured measure_takeoff(const struct shape *shape, int size, bool is_json)
{
	struct measured measured = { .status = -1 };
	char path[] = BUILD_FOLDER "/largest-XXXXXX";
	struct rusage usage;
	double began;
	int output, plot = mkstemp(path);
	pid_t child;

	if (plot < 0)
		abort();
	close(plot);
	draw(shape, size, path);
	began = now();
	child = start(path, is_json, &output);
	measured.printed = count_all(output);
	if (wait4(child, &measured.status, 0, &usage) != child)
		abort();
	measured.seconds = now() - began;
	measured.peak = (size_t)usage.ru_maxrss * 1024;
	unlink(path);
	return measured;
}

size_t heap_in_use(void)
{
	struct mallinfo2 heap = mallinfo2();

	return heap.uordblks + heap.hblkhd;
}

bool memory_is_its_own(void)
{
	return !IS_SANITIZED && !getenv("UNDER");
}
