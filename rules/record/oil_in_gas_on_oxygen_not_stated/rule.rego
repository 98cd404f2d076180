# METADATA
# title: Nobody says whether a gas on an oxygen line is free of oil
# description: |
#   Compressed air is oily unless its maker says otherwise, and nitrogen from a shop network may be too.
#   On an oxygen line that decides.
# schemas:
#   - input: schema.facts
# custom:
#   severity: condition
#   subject: fluids
#   scope: ["role=test|flush|pad", "form=compressed-gas"]
#   needs: []
#   absent: [fluids.oil_free]
#   message: >-
#     {name} goes through a line that carries oxygen, and the sheet does not say whether it is free of oil
#   action: "Find out from the supplier whether the gas is free of oil, and write it in the sheet."
#   basis:
#     - document: 29 CFR 1910.253
#       edition: "CFR 2015 annual edition"
#       clause: "(e)(5)(v)"
#       standing: published
package rules.record.oil_in_gas_on_oxygen_not_stated

report contains {"subject": f.id, "name": f.name} if {
	some f in input.fluids
	f.role in {"flush", "pad", "test"}
	f.form == "compressed-gas"
	some p in input.parts
	p.carries_oxygen

	# This is the fault; oil that is known has a rule of its own.
	not _stated(f)
}

_stated(f) if f.oil_free == true

_stated(f) if f.oil_free == false
