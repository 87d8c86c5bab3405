// Writing HDF5 files of columns: types, chunks, compression, attributes.
#include "report/hdf5_file.hpp"

#include <algorithm>

#include "base/base.hpp"

namespace maybough::report {
namespace {

/// The library prints its own stack of errors unless told not to; ours say what was being done.
hid_t quietly(hid_t id) {
    H5Eset_auto2(H5E_DEFAULT, nullptr, nullptr);
    return id;
}

void check(herr_t status, const std::string& doing) {
    if (status < 0) throw RunError(doing + " failed; is the disk full?");
}

Hdf5Handle text_type(std::size_t size, const std::string& doing) {
    Hdf5Handle type(H5Tcopy(H5T_C_S1), H5Tclose, doing);
    check(H5Tset_size(type.get(), size), doing);
    check(H5Tset_cset(type.get(), H5T_CSET_UTF8), doing);
    check(H5Tset_strpad(type.get(), size == H5T_VARIABLE ? H5T_STR_NULLTERM : H5T_STR_NULLPAD), doing);
    return type;
}

Hdf5Handle without_times(hid_t list_class, const std::string& doing) {
    Hdf5Handle list(H5Pcreate(list_class), H5Pclose, doing);
    check(H5Pset_obj_track_times(list.get(), false), doing);
    return list;
}

hid_t new_file(const std::string& path) {
    const Hdf5Handle list = without_times(H5P_FILE_CREATE, path);
    return quietly(H5Fcreate(path.c_str(), H5F_ACC_TRUNC, list.get(), H5P_DEFAULT));
}

}  // namespace

Hdf5Handle::Hdf5Handle(hid_t id, Close close, const std::string& doing) : id_(id), close_(close) {
    if (id_ < 0) throw RunError(doing + ": the HDF5 library refused");
}

Hdf5Handle::~Hdf5Handle() {
    if (id_ >= 0) close_(id_);
}

Hdf5Writer::Hdf5Writer(const std::string& path)
    : path_(path), file_(quietly(new_file(path)), H5Fclose, path + ": cannot be written") {}

void Hdf5Writer::text_attribute(hid_t object, const std::string& name, const std::string& value) {
    const std::string doing = path_ + ": attribute " + name;
    const Hdf5Handle type = text_type(H5T_VARIABLE, doing);
    const Hdf5Handle space(H5Screate(H5S_SCALAR), H5Sclose, doing);
    const Hdf5Handle made(H5Acreate2(object, name.c_str(), type.get(), space.get(), H5P_DEFAULT, H5P_DEFAULT), H5Aclose,
                          doing);
    const char* text = value.c_str();
    check(H5Awrite(made.get(), type.get(), static_cast<const void*>(&text)), doing);
}

void Hdf5Writer::attribute(const std::string& name, const std::string& value) {
    text_attribute(file_.get(), name, value);
}

void Hdf5Writer::attribute(const std::string& name, std::int64_t value) {
    const std::string doing = path_ + ": attribute " + name;
    const Hdf5Handle space(H5Screate(H5S_SCALAR), H5Sclose, doing);
    const Hdf5Handle made(H5Acreate2(file_.get(), name.c_str(), H5T_STD_I64LE, space.get(), H5P_DEFAULT, H5P_DEFAULT),
                          H5Aclose, doing);
    check(H5Awrite(made.get(), H5T_NATIVE_INT64, &value), doing);
}

void Hdf5Writer::column(const std::string& table, const std::string& name, hid_t file_type, hid_t memory_type,
                        const void* values, std::size_t count, const std::string& unit) {
    const std::string doing = path_ + ": " + table + "/" + name;
    const hsize_t rows = count;
    const Hdf5Handle space(H5Screate_simple(1, &rows, nullptr), H5Sclose, doing);
    const Hdf5Handle groups(H5Pcreate(H5P_LINK_CREATE), H5Pclose, doing);
    check(H5Pset_create_intermediate_group(groups.get(), 1), doing);
    const Hdf5Handle how = without_times(H5P_DATASET_CREATE, doing);
    constexpr hsize_t rows_worth_packing = 64;  // below, the chunk index would be larger than the data
    constexpr hsize_t rows_a_chunk = 4096;
    constexpr unsigned gzip_level = 4;
    if (rows >= rows_worth_packing) {
        const hsize_t chunk = std::min(rows, rows_a_chunk);
        check(H5Pset_chunk(how.get(), 1, &chunk), doing);
        check(H5Pset_shuffle(how.get()), doing);
        check(H5Pset_deflate(how.get(), gzip_level), doing);
    }
    const Hdf5Handle made(H5Dcreate2(file_.get(), (table + "/" + name).c_str(), file_type, space.get(), groups.get(),
                                     how.get(), H5P_DEFAULT),
                          H5Dclose, doing);
    if (count > 0) check(H5Dwrite(made.get(), memory_type, H5S_ALL, H5S_ALL, H5P_DEFAULT, values), doing);
    text_attribute(made.get(), "unit", unit);
}

void Hdf5Writer::column(const std::string& table, const std::string& name, std::span<const double> values,
                        const std::string& unit) {
    column(table, name, H5T_IEEE_F64LE, H5T_NATIVE_DOUBLE, values.data(), values.size(), unit);
}

void Hdf5Writer::column(const std::string& table, const std::string& name, std::span<const std::int64_t> values,
                        const std::string& unit) {
    column(table, name, H5T_STD_I64LE, H5T_NATIVE_INT64, values.data(), values.size(), unit);
}

void Hdf5Writer::column(const std::string& table, const std::string& name, std::span<const std::string> values,
                        const std::string& unit) {
    std::size_t longest = 1;
    for (const std::string& value : values) longest = std::max(longest, value.size());
    std::string block(longest * values.size(), '\0');
    for (std::size_t i = 0; i < values.size(); ++i) {
        std::copy(values[i].begin(), values[i].end(), block.begin() + static_cast<std::ptrdiff_t>(i * longest));
    }
    const Hdf5Handle type = text_type(longest, path_);
    column(table, name, type.get(), type.get(), block.data(), values.size(), unit);
}

void Hdf5Writer::finish() {
    check(H5Fflush(file_.get(), H5F_SCOPE_GLOBAL), path_ + ": writing");
}

}  // namespace maybough::report
