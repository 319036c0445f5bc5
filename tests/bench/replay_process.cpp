// SPDX-License-Identifier: GPL-3.0-or-later
//
// replay_process CLI [ROWS]: how long `replay` takes over a file of 10 million rows,
// against counting its lines (wc -l) plus reading its numbers with the same CSV
// library (fccp) and nothing else; and the most memory each took. Three runs each,
// the fastest counts. Writes about 250 MB into the temporary folder, and removes it.
#include "tests/support/simulated_tank.h"

#pragma GCC diagnostic push
#pragma GCC diagnostic ignored "-Wstringop-truncation"
#include <libfccp/csv.h>
#pragma GCC diagnostic pop

#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

using namespace undermark;
using namespace undermark::test;

namespace {

struct Cost {
    double seconds = 1e9;   // by the wall's clock
    double busy = 1e9;      // by the processor's: other programs do not disturb it
    long mostKiB = 0;
};

// Runs `work` in a process of its own and measures that.
template <typename Work>
Cost measured(Work work)
{
    Cost cost;
    for (int i = 0; i < 3; ++i) {
        const auto start = std::chrono::steady_clock::now();
        const pid_t child = fork();
        if (child == 0)
            std::_Exit(work());
        int status = 0;
        rusage usage{};
        wait4(child, &status, 0, &usage);
        if (!WIFEXITED(status) || WEXITSTATUS(status) != 0) {
            std::fprintf(stderr, "a run failed\n");
            std::exit(1);
        }
        const std::chrono::duration<double> took = std::chrono::steady_clock::now() - start;
        cost.seconds = std::min(cost.seconds, took.count());
        const auto spent = [](const timeval& t) { return double(t.tv_sec) + 1e-6 * double(t.tv_usec); };
        cost.busy = std::min(cost.busy, spent(usage.ru_utime) + spent(usage.ru_stime));
        cost.mostKiB = std::max(cost.mostKiB, usage.ru_maxrss);
    }
    return cost;
}

template <typename... Words>
int execute(const char* program, Words... words)
{
    if (!std::freopen("/dev/null", "w", stdout))
        return 1;
    execlp(program, program, words..., static_cast<char*>(nullptr));
    return 127;
}

int readNumbers(const std::string& file)
{
    io::CSVReader<4> reader(file);
    reader.read_header(io::ignore_extra_column, "t_s", "signal", "speed_kmh", "fuel_rate_l_h");
    double t = 0, signal = 0, speed = 0, rate = 0, sum = 0;
    while (reader.read_row(t, signal, speed, rate))
        sum += t + signal + speed + rate;
    return sum > 0.0 ? 0 : 1;
}

// A car that drives and is filled whenever it is nearly empty.
void writeDrive(const std::string& samples, const std::string& points, long rows)
{
    Random random(7);
    SimulatedCar car(random);
    std::ofstream curve(points);
    curve << "total_l,signal\n";
    for (const CalibrationPoint& point : car.calibrate(10, random))
        curve << point.added.litres() << ',' << point.signal.value() << '\n';
    std::FILE* out = std::fopen(samples.c_str(), "w");
    std::fprintf(out, "t_s,signal,speed_kmh,fuel_rate_l_h\n");
    car.fill(car.capacityL);
    car.settle();
    int halt = 0;
    for (long i = 0; i < rows; ++i) {
        if (car.litres < 6.0 && halt == 0)
            halt = 400;
        if (halt > 0 && --halt == 200)
            car.fill(car.capacityL);
        const auto now = car.step(halt == 0, random);
        std::fprintf(out, "%ld,%.4f,%.0f,%.2f\n", i, now.signal->value(),
                     now.speed ? now.speed->kmPerHour() : 0.0,
                     now.fuelRate ? now.fuelRate->litresPerHour() : 0.0);
    }
    std::fclose(out);
}

} // namespace

int main(int argc, char** argv)
{
    if (argc < 2) {
        std::fprintf(stderr, "usage: replay_process UNDERMARK-CLI [ROWS]\n");
        return 2;
    }
    const long rows = argc > 2 ? std::atol(argv[2]) : 10'000'000;
    const auto folder = std::filesystem::temp_directory_path() / ("replay_process_" + std::to_string(getpid()));
    std::filesystem::create_directories(folder);
    const std::string samples = folder / "samples.csv", points = folder / "points.csv";
    const std::string track = folder / "track.csv";
    writeDrive(samples, points, rows);
    const std::string few = folder / "few.csv";
    writeDrive(few, points, rows / 4);
    const Cost lines = measured([&] { return execute("wc", "-l", samples.c_str()); });
    const Cost numbers = measured([&] { return readNumbers(samples); });
    const auto replay = [&](const std::string& file) {
        return measured([&] {
            return execute(argv[1], "replay", file.c_str(), "--calibration", points.c_str(), "--json");
        });
    };
    const Cost all = replay(samples);
    const Cost few_ = replay(few);
    const Cost written = measured([&] {
        return execute(argv[1], "replay", samples.c_str(), "--calibration", points.c_str(), "--out",
                       track.c_str());
    });
    std::filesystem::remove_all(folder);
    const auto print = [](const char* what, const Cost& cost) {
        std::printf("%-24s %7.3f s, processor %7.3f s, %7ld KiB\n", what, cost.seconds, cost.busy,
                    cost.mostKiB);
    };
    std::printf("%ld rows\n", rows);
    print("wc -l", lines);
    print("numbers with fccp", numbers);
    print("replay", all);
    print("a quarter of the rows", few_);
    print("replay --out", written);
    std::printf("replay / (wc -l + numbers): %.2f, processor %.2f\n",
                all.seconds / (lines.seconds + numbers.seconds),
                all.busy / (lines.busy + numbers.busy));
    return 0;
}
