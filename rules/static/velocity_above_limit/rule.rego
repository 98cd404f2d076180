# METADATA
# title: A flammable liquid that holds charge runs too fast
# description: |
#   A liquid that conducts badly charges itself as it runs, the more the faster and the wider the bore.
#   Above these limits the charge it carries into the vessel can spark there.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: flows
#   scope: [flow_stated, carries_flammable]
#   needs: [flows.velocity_mmps, flows.velocity_bore_mm2ps]
#   absent: [flows.carries_accumulator]
#   message: >-
#     The flammable liquid in run {run} {charge} and runs at {speed_mmps} through {part}, {product_mm2ps}
#     as speed times bore; the limits are {speed_limit_mmps} and {product_limit_mm2ps}
#   action: >-
#     Lower the flow, or fit wider parts only as far as both limits hold; have the conductivity measured
#     if it is not known.
#   basis:
#     - document: API RP 2003
#       edition: ""
#       clause: "loading rates"
#       standing: recalled
#     - document: IEC TS 60079-32-1
#       edition: ""
#       clause: "pipe flow and road tankers"
#       standing: recalled
#     - document: TRGS 727
#       edition: ""
#       clause: "4.4.1"
#       standing: restated
package rules.static.velocity_above_limit

report contains {
	"subject": f.id,
	"run": f.id,
	"part": f.narrowest,
	"charge": _charge(f),
	"speed_mmps": f.velocity_mmps,
	"product_mm2ps": f.velocity_bore_mm2ps,
	"speed_limit_mmps": _speed,
	"product_limit_mm2ps": _product,
} if {
	some f in input.flows
	f.flow_stated
	f.carries_flammable
	_too_fast(f)
}

_too_fast(f) if f.velocity_mmps > _speed

_too_fast(f) if f.velocity_bore_mm2ps > _product

_charge(f) := "holds charge" if f.carries_accumulator == true

# Where the conductivity is unknown it counts as low.
_charge(f) := "may hold charge, its conductivity being unknown," if not _conductivity_known(f)

_conductivity_known(f) if f.carries_accumulator in {true, false}

# 7 m/s at most, and 0.5 m2/s as speed times bore.
_speed := 7000

_product := 500000
