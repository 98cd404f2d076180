# METADATA
# title: The gas pushes a road tank above its test pressure
# description: |
#   US law for road tanks keeps the pressure in the tank, while it is loaded or unloaded, at or below
#   the pressure it was tested with.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: vessels
#   scope: [padded, "regime=49 CFR 178.345-9"]
#   needs: [vessels.pad_kpa, vessels.test_pressure_kpa]
#   message: "The gas pushes with up to {need_kpa}; {part} was tested at {have_kpa}"
#   action: "Lower the gas pressure and limit it with a relief device."
#   basis:
#     - document: 49 CFR 178.345-9
#       edition: "CFR 2015 annual edition"
#       clause: "(a)"
#       standing: published
package rules.pressure.tank_above_test_pressure

report contains {
	"subject": v.id,
	"part": v.id,
	"have_kpa": v.test_pressure_kpa,
	"need_kpa": v.pad_kpa,
} if {
	"49 CFR 178.345-9" in input.line.regimes
	some v in input.vessels
	v.padded

	# The pad is rounded up and the test pressure down: what is equal in psi may lie one apart.
	v.pad_kpa > v.test_pressure_kpa + 1
}
