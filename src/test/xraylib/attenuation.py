#!/usr/bin/python3
"""Writes the mass attenuation coefficients that xraylib computes, to compare the tables of the beam model with.

xraylib (https://github.com/tschoonj/xraylib, BSD 3-clause) is a general library of photon cross-sections. It computes
them between the energies of its own tables in its own way. On Debian: apt-get install python3-xraylib. From the folder of pom.xml:

    /usr/bin/python3 src/test/xraylib/attenuation.py > src/test/resources/physics/attenuation_xraylib.csv

AttenuationAgainstXraylibTest reads the file, and holds materials and energies below against it.
"""

import datetime
import xraylib

ENERGIES_KEV = range(8, 150 + 1)

# column of the file: a chemical formula, or the name of a mixture in the compound list of NIST that the library carries
MATERIALS = {
    "water": "H2O",
    "air": "Air, Dry (near sea level)",
    "Al": "Al",
    "Cu": "Cu",
    "W": "W",
    "Be": "Be",
    "kapton": "Kapton Polyimide Film",
    "csi": "CsI",
}

HEAD = """\
# Total mass attenuation coefficient mu/rho, cm2/g, with coherent scattering, by photon energy in keV.
# Source: xraylib {version}, run {date} by src/test/xraylib/attenuation.py; formulas H2O, Al, Cu, W, Be, CsI, and the
#   library's NIST compositions of dry air near sea level and of Kapton polyimide film. No value of this project's own.
# Licence of xraylib: BSD 3-clause.
"""


def coefficient(material, energy):
    """cm2/g at an energy in keV."""
    if material not in xraylib.GetCompoundDataNISTList():
        return xraylib.CS_Total_CP(material, energy)
    mixture = xraylib.GetCompoundDataNISTByName(material)
    parts = zip(mixture["Elements"], mixture["massFractions"])
    return sum(share * xraylib.CS_Total(element, energy) for element, share in parts)


print(HEAD.format(version=xraylib.__version__, date=datetime.date.today()), end="")
print("energy_keV," + ",".join("mu_" + column for column in MATERIALS))
for energy in ENERGIES_KEV:
    values = (coefficient(material, float(energy)) for material in MATERIALS.values())
    print(f"{energy}," + ",".join(f"{value:.6g}" for value in values))
