// The parallel loop: replicates on threads, results to the sink in index order, failures told together.
#pragma once

#include <atomic>
#include <exception>
#include <map>
#include <mutex>
#include <optional>
#include <string>
#include <thread>
#include <utility>

#include "base/base.hpp"
#include "ensemble/ensemble.hpp"

namespace maybough::ensemble {

template <class Result>
void run_in_order(std::uint32_t first, std::uint32_t last, unsigned threads,
                  const std::function<Result(std::uint32_t)>& job,
                  const std::function<void(std::uint32_t, Result&&)>& sink, const Progress& progress,
                  const FaultName& name) {
    std::atomic<std::uint32_t> next{first};
    std::mutex door;  // guards everything below
    std::map<std::uint32_t, Result> waiting;
    std::map<std::uint32_t, std::string> failures;
    std::map<std::uint32_t, std::exception_ptr> not_ours;  // what user or machine can mend
    std::uint32_t due = first;
    std::uint32_t done = 0;
    std::exception_ptr sink_failed;

    const auto work = [&] {
        for (std::uint32_t i = next.fetch_add(1); i < last; i = next.fetch_add(1)) {
            std::optional<Result> result;
            std::string failure;
            std::exception_ptr mendable;
            try {
                result.emplace(job(i));
            } catch (const InputError&) {
                mendable = std::current_exception();
            } catch (const RunError&) {
                mendable = std::current_exception();
            } catch (const std::exception& e) {
                failure = e.what();
            }
            const std::lock_guard<std::mutex> lock(door);
            if (sink_failed) return;
            ++done;
            if (mendable) {
                not_ours.emplace(i, mendable);
                next = last;  // every season would say the same
            } else if (result) {
                waiting.emplace(i, std::move(*result));
            } else {
                failures.emplace(i, failure);
            }
            try {
                for (auto found = waiting.find(due); found != waiting.end(); found = waiting.find(due)) {
                    sink(due, std::move(found->second));
                    waiting.erase(found);
                    ++due;
                }
                if (progress) progress(done, last - first);
            } catch (...) {
                sink_failed = std::current_exception();
            }
        }
    };
    std::vector<std::thread> crew;
    for (unsigned t = 1; t < threads; ++t) crew.emplace_back(work);
    work();
    for (std::thread& hand : crew) hand.join();
    if (sink_failed) std::rethrow_exception(sink_failed);
    if (!not_ours.empty()) std::rethrow_exception(not_ours.begin()->second);
    if (!failures.empty()) {
        std::string told = std::to_string(failures.size()) + " of " + std::to_string(last - first) + " failed";
        int said = 0;
        for (const auto& [index, text] : failures) {
            if (++said > 4) break;
            told += "\n  " + (name ? name(index) : "job " + std::to_string(index + 1)) + ": " + text;
        }
        throw ModelFault(told);
    }
}

}  // namespace maybough::ensemble
