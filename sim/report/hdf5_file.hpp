// HDF5 files of columns, by the C library: private to report/. A table is a group; a column is a dataset of one
// dimension with a `unit` attribute. Object times are off, so that the same results give the same bytes.
#pragma once

#include <hdf5.h>

#include <cstdint>
#include <span>
#include <string>
#include <utility>
#include <vector>

namespace maybough::report {

/// Owns one HDF5 identifier.
class Hdf5Handle {
  public:
    using Close = herr_t (*)(hid_t);
    /// Throws RunError saying `doing` where the library refused.
    Hdf5Handle(hid_t id, Close close, const std::string& doing);
    ~Hdf5Handle();
    Hdf5Handle(Hdf5Handle&& other) noexcept : id_(std::exchange(other.id_, -1)), close_(other.close_) {}
    Hdf5Handle(const Hdf5Handle&) = delete;
    Hdf5Handle& operator=(const Hdf5Handle&) = delete;
    Hdf5Handle& operator=(Hdf5Handle&&) = delete;
    hid_t get() const { return id_; }

  private:
    hid_t id_;
    Close close_;
};

/// Writes a new file. Every failure throws RunError with the file's name.
class Hdf5Writer {
  public:
    explicit Hdf5Writer(const std::string& path);
    void attribute(const std::string& name, const std::string& value);
    void attribute(const std::string& name, std::int64_t value);
    void column(const std::string& table, const std::string& name, std::span<const double> values,
                const std::string& unit);
    void column(const std::string& table, const std::string& name, std::span<const std::int64_t> values,
                const std::string& unit);
    void column(const std::string& table, const std::string& name, std::span<const std::string> values,
                const std::string& unit);
    /// Flushes all to the disk.
    void finish();

  private:
    void column(const std::string& table, const std::string& name, hid_t file_type, hid_t memory_type,
                const void* values, std::size_t count, const std::string& unit);
    void text_attribute(hid_t object, const std::string& name, const std::string& value);
    std::string path_;
    Hdf5Handle file_;
};

/// Reads such a file. What is no such file, or lacks what is asked for, throws InputError with file and name.
class Hdf5Reader {
  public:
    explicit Hdf5Reader(const std::string& path);
    bool has_attribute(const std::string& name) const;
    std::string text_attribute(const std::string& name) const;
    std::int64_t whole_attribute(const std::string& name) const;
    bool has_column(const std::string& table, const std::string& name) const;
    std::vector<double> numbers(const std::string& table, const std::string& name) const;
    std::vector<std::int64_t> wholes(const std::string& table, const std::string& name) const;
    std::vector<std::string> texts(const std::string& table, const std::string& name) const;
    const std::string& path() const { return path_; }

  private:
    Hdf5Handle open_column(const std::string& table, const std::string& name, H5T_class_t expected) const;
    std::string path_;
    Hdf5Handle file_;
};

}  // namespace maybough::report
